// Does a calculation that reads the book get found?
#pragma once

#include "core/model/money.h"
#include "core/store/book.h"
