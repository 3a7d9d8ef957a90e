#include "platform/assets.hpp"

#include <algorithm>
#include <string>

#include "base/ensure.hpp"
#include "platform/asset_table.hpp"

namespace fw::platform {
namespace {

const Asset* find_asset(std::string_view name) {
  const Asset* end = asset_table + asset_count;
  const Asset* found =
      std::lower_bound(asset_table, end, name, [](const Asset& a, std::string_view wanted) { return a.name < wanted; });
  return found != end && found->name == name ? found : nullptr;
}

}  // namespace

std::string_view asset(std::string_view name) {
  const Asset* found = find_asset(name);
  ensure(found != nullptr, "the program has no asset \"" + std::string(name) + "\"");
  return {found->bytes, found->size};
}

bool has_asset(std::string_view name) { return find_asset(name) != nullptr; }

std::vector<std::string_view> asset_names() {
  std::vector<std::string_view> names;
  names.reserve(asset_count);
  for (std::size_t i = 0; i < asset_count; ++i) names.push_back(asset_table[i].name);
  return names;
}

}  // namespace fw::platform
