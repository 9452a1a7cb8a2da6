#include "core/qml/job_list.h"
