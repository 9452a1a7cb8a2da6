#include "core/store/book.h"
