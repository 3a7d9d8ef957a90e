// Must not compile: exact stands below solids.
#include "solids/solid.hpp"
