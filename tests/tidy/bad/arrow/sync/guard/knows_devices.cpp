#include "sync/identity/roster.h"
