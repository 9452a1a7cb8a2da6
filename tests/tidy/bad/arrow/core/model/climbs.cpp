#include "core/compute/budget.h"
