  #  include "core/intake/notes/draft.h"
