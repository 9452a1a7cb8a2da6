#include "sync/exchange/views.h"
