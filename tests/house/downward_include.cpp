// Must compile: exact stands above base. Shows that the upward include fails for the right reason.
#include "base/result.hpp"
