#include <algorithm>

#include "state/apply/handlers.hpp"

namespace fw::state::handlers {
namespace {

std::string number_of(FaceId face) { return std::to_string(face.index() + 1); }

bool is_among(const std::vector<FaceId>& faces, FaceId face) {
  return std::find(faces.begin(), faces.end(), face) != faces.end();
}

/// The face itself, or with alike faces counted together all of its group that count.
std::vector<FaceId> counted_with(const State& state, FaceId face) {
  const Desk& desk = state.desk();
  if (desk.grouping == reasoning::Grouping::EachFace) {
    return {face};
  }
  const std::vector<FaceId> open = open_on_desk(state);
  std::vector<FaceId> alike;
  for (const solids::Face& other : desk.solid.faces()) {
    const bool counts = other.id == face || !is_among(open, other.id);
    if (counts && other.group == desk.solid.faces()[face].group) {
      alike.push_back(other.id);
    }
  }
  return alike;
}

}  // namespace

bool exists(const Desk& desk, FaceId face) { return face.index() < desk.solid.faces().size(); }

std::string on(Model& model, const PickFace& command) {
  if (!command.face || exists(desk(model), *command.face)) {
    desk(model).picked = command.face;
  }
  return {};
}

std::string on(Model& model, const StepPicked& command) {
  Desk& place = desk(model);
  const auto count = static_cast<std::ptrdiff_t>(place.solid.faces().size());
  std::ptrdiff_t next = command.by > 0 ? 0 : count - 1;
  if (place.picked) {
    next = (static_cast<std::ptrdiff_t>(place.picked->index()) + command.by % count + count) % count;
  }
  place.picked = FaceId::at(static_cast<std::size_t>(next));
  return {};
}

std::string on(Model& model, const CountFace& command) {
  Desk& place = desk(model);
  if (!exists(place, command.face)) {
    return {};
  }
  place.picked = command.face;
  const std::vector<FaceId> faces = counted_with(model.state, command.face);
  place.counted.insert(place.counted.end(), faces.begin(), faces.end());
  return "count face " + number_of(command.face);
}

std::string on(Model& model, const CountNext&) {
  const std::optional<FaceId> next = next_to_count(model.state);
  return next ? on(model, CountFace{*next}) : std::string();
}

std::string on(Model& model, const UncountLast&) {
  Desk& place = desk(model);
  if (place.counted.empty()) {
    return {};
  }
  const FaceId last = place.counted.back();
  const std::size_t together = std::min(counted_with(model.state, last).size(), place.counted.size());
  place.counted.resize(place.counted.size() - together);
  place.picked.reset();
  return "take back face " + number_of(last);
}

std::string on(Model& model, const ClearCount&) {
  Desk& place = desk(model);
  place.counted.clear();
  place.picked.reset();
  place.total_shown = false;
  return "start the count over";
}

std::string on(Model& model, const SetGrouping& command) {
  Desk& place = desk(model);
  if (place.grouping == command.grouping) {
    return {};
  }
  place.grouping = command.grouping;
  // What is counted stays counted, each face once; a half-counted group, which cannot be a row of its own, gets whole.
  const std::vector<FaceId> before = std::exchange(place.counted, {});
  for (const FaceId face : before) {
    if (!is_among(place.counted, face)) {
      const std::vector<FaceId> faces = counted_with(model.state, face);
      place.counted.insert(place.counted.end(), faces.begin(), faces.end());
    }
  }
  return command.grouping == reasoning::Grouping::AlikeTogether ? "count congruent faces together"
                                                                : "count each face by itself";
}

std::string on(Model& model, const ShowTotal& command) {
  Desk& place = desk(model);
  place.total_shown = command.shown;
  if (command.shown) {
    place.picked.reset();  // all rows, and no card over them
  }
  return command.shown ? "show how many faces there are" : "hide how many faces there are";
}

std::string on(Model& model, const ShowVolume& command) {
  Desk& place = desk(model);
  place.volume_shown = command.shown;
  if (command.shown) {
    place.picked.reset();
  }
  return command.shown ? "show the volume" : "hide the volume";
}

}  // namespace fw::state::handlers
