#include "lessons/json_text.hpp"

#include <nlohmann/json.hpp>

namespace fw::lessons {

std::string quote(const std::string& text) { return nlohmann::json(text).dump(); }

std::string in_line(const std::vector<std::string>& items, char open, char close) {
  std::string text(1, open);
  for (std::size_t i = 0; i < items.size(); ++i) {
    text += (i == 0 ? "" : ", ") + items[i];
  }
  return text + close;
}

std::string object_in_line(const Members& members) {
  std::vector<std::string> items;
  for (const auto& [key, value] : members) {
    items.push_back(quote(key) + ": " + value);
  }
  return in_line(items, '{', '}');
}

std::string object_in_lines(const Members& members, std::size_t indent) {
  std::string text = "{\n";
  for (std::size_t i = 0; i < members.size(); ++i) {
    text += std::string(indent + 2, ' ') + quote(members[i].first) + ": " + members[i].second;
    text += i + 1 == members.size() ? "\n" : ",\n";
  }
  return text + std::string(indent, ' ') + "}";
}

std::string coordinate_text(const exact::Written& coordinate) {
  const nlohmann::json parsed = nlohmann::json::parse(coordinate.text, nullptr, false);
  return parsed.is_number() ? coordinate.text : nlohmann::json(coordinate.text).dump();
}

}  // namespace fw::lessons
