#include "core/report/week_page.h"
