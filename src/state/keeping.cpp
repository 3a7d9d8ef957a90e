#include "state/keeping.hpp"

#include <nlohmann/json.hpp>

#include "lessons/write_lesson.hpp"
#include "solids/body/body_nets.hpp"
#include "tasks/catalog.hpp"

namespace fw::state {
namespace {

using nlohmann::json;

constexpr int version = 1;

struct ThemeWord {
  ThemeName theme;
  const char* word;
};
constexpr ThemeWord theme_words[] = {
    {ThemeName::Paper, "paper"}, {ThemeName::Slate, "slate"}, {ThemeName::BrightRoom, "bright room"}};

struct SpeedWord {
  PlaySpeed speed;
  const char* word;
};
constexpr SpeedWord speed_words[] = {{PlaySpeed::Slow, "slow"}, {PlaySpeed::Usual, "usual"}, {PlaySpeed::Fast, "fast"}};

json face_numbers(const std::vector<FaceId>& faces) {
  json numbers = json::array();
  for (const FaceId face : faces) {
    numbers.push_back(face.value + 1);
  }
  return numbers;
}

/// A lesson of one problem that holds the solid as it was changed.
std::string solid_text(const lessons::Problem& problem, const Desk& desk) {
  lessons::Problem changed = problem;
  changed.description = desk.solid.description();
  changed.known = changed.description.kind == problem.description.kind ? problem.known : solids::Known{};
  changed.tasks = {tasks::named("surface_area")};
  changed.solid = desk.solid;
  return lessons::write_lesson({"kept", {changed}});
}

json desk_json(const lessons::Problem& problem, const Desk& desk) {
  json entry = {{"counted", face_numbers(desk.counted)},
                {"together", desk.grouping == reasoning::Grouping::AlikeTogether},
                {"total_shown", desk.total_shown},
                {"volume_shown", desk.volume_shown}};
  if (!(desk.solid == problem.solid)) {
    entry["solid"] = solid_text(problem, desk);
  }
  json hinges = json::array();
  for (const EdgeId hinge : desk.net.hinges()) {
    hinges.push_back(hinge.value);
  }
  entry["hinges"] = hinges;
  return entry;
}

/// A desk as it was kept; a part that does not fit the solid any more is left as it is on a fresh desk.
Desk desk_from(const json& entry, const lessons::Problem& problem) {
  Desk desk = fresh_desk(problem);
  if (entry.contains("solid")) {
    const auto kept = tasks::read_lesson(entry.at("solid").get<std::string>());
    if (kept && kept->problems.size() == 1) {
      desk = fresh_desk(kept->problems.front().solid);
    }
  }
  for (const auto& number : entry.at("counted").get<std::vector<std::uint32_t>>()) {
    if (number >= 1 && number <= desk.solid.faces().size()) {
      desk.counted.push_back(FaceId{number - 1});
    }
  }
  desk.grouping = entry.at("together").get<bool>() ? reasoning::Grouping::AlikeTogether : reasoning::Grouping::EachFace;
  desk.total_shown = entry.at("total_shown").get<bool>();
  desk.volume_shown = entry.at("volume_shown").get<bool>();
  std::vector<EdgeId> hinges;
  for (const auto edge : entry.at("hinges").get<std::vector<std::uint32_t>>()) {
    if (edge < desk.solid.body().edge_count()) {
      hinges.push_back(EdgeId{edge});
    }
  }
  auto net = solids::net_with(desk.solid.body(), desk.net.root(), std::move(hinges));
  if (net) {
    desk.net = std::move(net).value();
  }
  return desk;
}

}  // namespace

std::string settings_text(const Settings& settings) {
  std::string theme;
  for (const ThemeWord& row : theme_words) {
    if (row.theme == settings.theme) {
      theme = row.word;
    }
  }
  std::string speed;
  for (const SpeedWord& row : speed_words) {
    if (row.speed == settings.speed) {
      speed = row.word;
    }
  }
  json text = {{"settings", version},
               {"theme", theme},
               {"reduced_motion", settings.reduced_motion},
               {"speed", speed},
               {"letter_keys", settings.letter_keys},
               {"full_screen", settings.full_screen}};
  if (settings.notation) {
    text["notation"] = algebra::words_for(*settings.notation);
  }
  return text.dump(2) + "\n";
}

Result<Settings, std::string> read_settings(std::string_view text) {
  const json read = json::parse(text, nullptr, false);
  if (!read.is_object() || !read.contains("settings")) {
    return failure(std::string("The settings file is damaged: it should be a JSON object with \"settings\": 1."));
  }
  Settings settings;
  try {
    const std::string theme = read.value("theme", std::string("paper"));
    for (const ThemeWord& row : theme_words) {
      if (theme == row.word) {
        settings.theme = row.theme;
      }
    }
    settings.reduced_motion = read.value("reduced_motion", false);
    settings.letter_keys = read.value("letter_keys", true);
    settings.full_screen = read.value("full_screen", false);
    const std::string speed = read.value("speed", std::string("usual"));
    for (const SpeedWord& row : speed_words) {
      if (speed == row.word) {
        settings.speed = row.speed;
      }
    }
    if (read.contains("notation")) {
      algebra::ClassNotation notation;
      for (const auto& word : read.at("notation").get<std::vector<std::string>>()) {
        notation = algebra::with_word(notation, word).value_or(notation);
      }
      settings.notation = notation;
    }
  } catch (const json::exception&) {
    return failure(std::string("The settings file is damaged: an entry has the wrong type."));
  }
  return settings;
}

std::string place_text(const State& state) {
  json desks = json::object();
  for (std::size_t i = 0; i < state.desks.size(); ++i) {
    if (state.desks[i]) {
      desks[state.lesson->problems[i].id] = desk_json(state.lesson->problems[i], *state.desks[i]);
    }
  }
  const json place = {{"place", version},
                      {"lesson", state.lesson_path},
                      {"title", state.lesson->title},
                      {"problem", state.lesson->problems[state.problem].id},
                      {"desks", desks}};
  return place.dump(2) + "\n";
}

Result<State, std::string> at_place(State fresh, std::string_view text) {
  const json read = json::parse(text, nullptr, false);
  if (!read.is_object() || !read.contains("place")) {
    return failure(std::string("The saved place is damaged: it should be a JSON object with \"place\": 1."));
  }
  try {
    if (read.at("lesson") != fresh.lesson_path || read.at("title") != fresh.lesson->title) {
      return fresh;
    }
    const json& desks = read.at("desks");
    for (std::size_t i = 0; i < fresh.desks.size(); ++i) {
      const lessons::Problem& problem = fresh.lesson->problems[i];
      if (desks.contains(problem.id)) {
        fresh.desks[i] = desk_from(desks.at(problem.id), problem);
      }
      if (read.at("problem") == problem.id) {
        fresh.problem = i;
      }
    }
  } catch (const json::exception&) {
    return failure(std::string("The saved place is damaged: an entry is missing or has the wrong type."));
  }
  if (!fresh.desks[fresh.problem]) {
    fresh.desks[fresh.problem] = fresh_desk(fresh.current());
  }
  return fresh;
}

}  // namespace fw::state
