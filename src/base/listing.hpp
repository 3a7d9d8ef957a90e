#pragma once

#include <string>
#include <vector>

namespace fw {

/// "a", "a and b", "a, b and c".
[[nodiscard]] std::string joined_with_and(const std::vector<std::string>& words);

}  // namespace fw
