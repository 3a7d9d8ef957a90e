#include <boost/throw_exception.hpp>

#include "base/ensure.hpp"

// The page is built without exceptions. Exact numbers are checked before they are handed to Boost, so what Boost would
// throw is a broken invariant. Source of the two functions: the documentation of Boost.ThrowException.
namespace boost {

void throw_exception(const std::exception& fault) { fw::broken_invariant(fault.what(), __FILE__, __LINE__); }
void throw_exception(const std::exception& fault, const source_location& place) {
  fw::broken_invariant(fault.what(), place.file_name(), static_cast<int>(place.line()));
}

}  // namespace boost
