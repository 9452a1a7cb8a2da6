// Does a header with the old kind of guard get found?
#ifndef GUARDED_H
#define GUARDED_H
#endif
