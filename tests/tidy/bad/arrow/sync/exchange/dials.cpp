#include "sync/link/client.h"
