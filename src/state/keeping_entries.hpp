#pragma once

#include <nlohmann/json.hpp>

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace fw::state {

/// Reads the entries of a JSON object one by one, each as what it should be, and throws nothing. What is of another
/// type is a fault, and comes back as if it were missing.
class Entries {
 public:
  explicit Entries(const nlohmann::json& object) : object_(object) {}

  [[nodiscard]] std::optional<bool> flag(const char* name) {
    const nlohmann::json* entry = find(name, &nlohmann::json::is_boolean);
    return entry == nullptr ? std::nullopt : std::optional(*entry->get_ptr<const bool*>());
  }
  [[nodiscard]] std::optional<std::string> text(const char* name) {
    const nlohmann::json* entry = find(name, &nlohmann::json::is_string);
    return entry == nullptr ? std::nullopt : std::optional(*entry->get_ptr<const std::string*>());
  }
  /// Whole numbers from 0 on.
  [[nodiscard]] std::optional<std::vector<std::uint32_t>> numbers(const char* name) {
    return list<std::uint32_t>(name, [](const nlohmann::json& item) -> std::optional<std::uint32_t> {
      const auto* number = item.get_ptr<const nlohmann::json::number_unsigned_t*>();
      const bool fits = number != nullptr && *number <= UINT32_MAX;
      return fits ? std::optional(static_cast<std::uint32_t>(*number)) : std::nullopt;
    });
  }
  [[nodiscard]] std::optional<std::vector<std::string>> texts(const char* name) {
    return list<std::string>(name, [](const nlohmann::json& item) {
      const auto* text = item.get_ptr<const std::string*>();
      return text == nullptr ? std::nullopt : std::optional(*text);
    });
  }
  /// Null where there is none.
  [[nodiscard]] const nlohmann::json* object(const char* name) { return find(name, &nlohmann::json::is_object); }
  [[nodiscard]] const nlohmann::json* list(const char* name) { return find(name, &nlohmann::json::is_array); }

  /// Some entry that was asked for is of another type.
  [[nodiscard]] bool has_fault() const { return has_fault_; }

 private:
  [[nodiscard]] const nlohmann::json* find(const char* name, bool (nlohmann::json::*is_right)() const noexcept) {
    const auto found = object_.find(name);
    if (found == object_.end()) return nullptr;
    if (((*found).*is_right)()) return &*found;
    has_fault_ = true;
    return nullptr;
  }
  template <class Item, class Read>
  [[nodiscard]] std::optional<std::vector<Item>> list(const char* name, Read read) {
    const nlohmann::json* entries = list(name);
    if (entries == nullptr) return std::nullopt;
    std::vector<Item> items;
    for (const nlohmann::json& entry : *entries) {
      const std::optional<Item> item = read(entry);
      has_fault_ = has_fault_ || !item;
      if (item) items.push_back(*item);
    }
    return items;
  }

  const nlohmann::json& object_;
  bool has_fault_ = false;
};

}  // namespace fw::state
