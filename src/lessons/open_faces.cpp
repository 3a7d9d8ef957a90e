#include "lessons/open_faces.hpp"

#include <algorithm>

namespace fw::lessons {
namespace {

using geometry::FaceId;
using geometry::Vec3;
using solids::FaceRole;
using words::message;
using words::Noun;

struct Direction {
  const char* word;
  Vec3 outward;
};
// z is up, and the viewer stands at negative y.
const std::vector<Direction>& directions() {
  static const std::vector<Direction> table{{"top", {0, 0, 1}},  {"bottom", {0, 0, -1}}, {"front", {0, -1, 0}},
                                            {"back", {0, 1, 0}}, {"left", {-1, 0, 0}},   {"right", {1, 0, 0}}};
  return table;
}

std::vector<FaceId> faces_of_role(const solids::Solid& solid, FaceRole role) {
  std::vector<FaceId> faces;
  for (const solids::Face& face : solid.faces()) {
    if (face.role == role) {
      faces.push_back(face.id);
    }
  }
  return faces;
}

std::string found_name(const JsonNode& item, const Context& context) {
  if (item.is(JsonNode::Kind::Text) || item.is(JsonNode::Kind::Number)) {
    return item.text;
  }
  context.fault(item, message("an open face is a word such as \"top\" or the number of a face; found {found}",
                              {{"found", found_text(item)}}));
  return "";
}

// The role that a measure adds up, where it leaves other faces out anyway.
std::optional<FaceRole> role_of(std::string_view measure) {
  return measure == "lateral_area" ? std::optional(FaceRole::Lateral)
         : measure == "base_area"  ? std::optional(FaceRole::Base)
                                   : std::nullopt;
}

}  // namespace

std::vector<std::string> face_words(const solids::Solid& solid) {
  std::vector<std::string> words;
  for (const Direction& direction : directions()) {
    if (solid.body().faces_toward(direction.outward).size() == 1) {
      words.emplace_back(direction.word);
    }
  }
  if (solid.traits().has_base) {
    words.emplace_back(solid.traits().has_second_base ? "bases" : "base");
  }
  return words;
}

std::optional<std::vector<FaceId>> faces_named(const solids::Solid& solid, std::string_view name) {
  for (const solids::Face& face : solid.faces()) {
    if (std::to_string(face.id.index() + 1) == name) {
      return std::vector<FaceId>{face.id};
    }
  }
  const std::vector<std::string> words = face_words(solid);
  if (std::find(words.begin(), words.end(), name) == words.end()) {
    return std::nullopt;
  }
  for (const Direction& direction : directions()) {
    if (name == direction.word) {
      return solid.body().faces_toward(direction.outward);
    }
  }
  return faces_of_role(solid, FaceRole::Base);
}

std::vector<FaceId> open_faces(const Problem& problem) {
  std::vector<FaceId> faces;
  for (const OpenFaces& entry : problem.open) {
    faces.insert(faces.end(), entry.faces.begin(), entry.faces.end());
  }
  std::sort(faces.begin(), faces.end());
  return faces;
}

std::vector<OpenFaces> read_open(const JsonNode& node, const solids::Solid& solid, const Context& context) {
  std::vector<OpenFaces> open;
  if (!node.is(JsonNode::Kind::List) || node.items.empty()) {
    context.fault(node,
                  message("\"open\" is a list of the faces that do not count, such as [\"top\"] or [2]; found {found}",
                          {{"found", found_text(node)}}));
    return open;
  }
  const std::size_t count = solid.faces().size();
  const Noun noun{solid.name()};
  std::vector<FaceId> named;
  for (const JsonNode& item : node.items) {
    const std::string name = found_name(item, context);
    const std::optional<std::vector<FaceId>> faces = faces_named(solid, name);
    if (name.empty()) {
      continue;
    }
    if (!faces && item.is(JsonNode::Kind::Number)) {
      context.fault(item, message("there is no face {name}: the faces of {solid:a} are numbered 1 to {count}",
                                  {{"name", name}, {"solid", noun}, {"count", count}}));
      continue;
    }
    if (!faces) {
      context.fault(
          item, message("{name} is not a face of {solid:a}, whose faces also have numbers, 1 to {count}{suggestion}",
                        {{"name", in_quotes(name)},
                         {"solid", noun},
                         {"count", count},
                         {"suggestion", suggestion(name, face_words(solid))}}));
      continue;
    }
    for (const FaceId face : *faces) {
      if (std::find(named.begin(), named.end(), face) != named.end()) {
        context.fault(item, message("face {face} is open twice: name it once", {{"face", face.index() + 1}}));
        continue;
      }
      named.push_back(face);
    }
    open.push_back({name, *faces});
  }
  if (named.size() >= solid.faces().size()) {
    context.fault(node, message("every face is open, so nothing is left to cover: at least one face counts"));
  }
  return open;
}

void check_open(const JsonNode& node, const Problem& problem, const std::vector<std::string>& asked,
                const Context& context) {
  if (const JsonNode* known = node.find("known"); known != nullptr && known->find("surface_area") != nullptr) {
    context.at("surface_area")
        .fault(
            *known->find("surface_area"),
            message("a known surface area is that of the closed solid, and this problem has open faces: give another "
                    "measure"));
  }
  const std::vector<FaceId> open = open_faces(problem);
  for (const std::string& measure : asked) {
    const std::optional<FaceRole> role = role_of(measure);
    const bool is_cut = role && std::any_of(open.begin(), open.end(),
                                            [&](FaceId face) { return problem.solid.faces()[face].role == *role; });
    if (is_cut) {
      context.at("open").fault(*node.find("open"),
                               message("\"{measure}\" counts all faces of its kind, and one of them is open: ask for "
                                       "\"surface_area\", which leaves open faces out",
                                       {{"measure", measure}}));
      return;
    }
  }
}

}  // namespace fw::lessons
