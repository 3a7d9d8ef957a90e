#pragma once

#include <string_view>
#include <vector>

namespace fw::platform {

/// The bytes of a file that was put into the program when it was built: "Andika-Regular.ttf",
/// "Andika-Bold.ttf", "licenses.txt", each file of shaders/ ("bench_face.vert") and each of demo_scenes/
/// ("lantern_fair.json"). They live as long as the program. Requires: the name is one of asset_names().
[[nodiscard]] std::string_view asset(std::string_view name);

[[nodiscard]] bool has_asset(std::string_view name);

/// Every name, in alphabetical order.
[[nodiscard]] std::vector<std::string_view> asset_names();

}  // namespace fw::platform
