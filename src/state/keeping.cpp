#include "state/keeping.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <cstdint>
#include <cstdio>
#include <optional>

#include "lessons/write_lesson.hpp"
#include "solids/body/body_nets.hpp"
#include "state/keeping_entries.hpp"
#include "tasks/catalog.hpp"

namespace fw::state {
namespace {

using nlohmann::json;

constexpr int settings_version = 1;
constexpr int place_version = 2;          // the first one held a single lesson
constexpr std::size_t most_lessons = 30;  // whose places are kept; the one that was left longest ago goes first

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

/// A desk as it was kept; a part that does not fit the solid any more is left as it is on a fresh desk. Nothing where
/// an entry is missing or of the wrong type.
std::optional<Desk> desk_from(const json& kept, const lessons::Problem& problem) {
  Entries entries(kept);
  const auto solid = entries.text("solid");
  const auto counted = entries.numbers("counted");
  const auto together = entries.flag("together");
  const auto total_shown = entries.flag("total_shown");
  const auto volume_shown = entries.flag("volume_shown");
  const auto kept_hinges = entries.numbers("hinges");
  if (entries.has_fault() || !counted || !together || !total_shown || !volume_shown || !kept_hinges) {
    return std::nullopt;
  }
  Desk desk = fresh_desk(problem);
  if (solid) {
    const auto lesson = tasks::read_lesson(*solid);
    if (lesson && lesson->problems.size() == 1) {
      desk = fresh_desk(lesson->problems.front().solid);
    }
  }
  for (const std::uint32_t number : *counted) {
    const bool is_new = std::find(desk.counted.begin(), desk.counted.end(), FaceId{number - 1}) == desk.counted.end();
    if (number >= 1 && number <= desk.solid.faces().size() && is_new) {
      desk.counted.push_back(FaceId{number - 1});
    }
  }
  desk.grouping = *together ? reasoning::Grouping::AlikeTogether : reasoning::Grouping::EachFace;
  desk.total_shown = *total_shown;
  desk.volume_shown = *volume_shown;
  std::vector<EdgeId> hinges;
  for (const std::uint32_t edge : *kept_hinges) {
    hinges.push_back(EdgeId{edge});
  }
  auto net = solids::net_with(desk.solid.body(), desk.net.root(), std::move(hinges));
  if (net) {
    desk.net = std::move(net).value();
  }
  return desk;
}

/// Stands for the text of a lesson, however its file is named or laid out.
/// Source: the hash FNV-1a of 64 bits, by Fowler, Noll and Vo.
std::string mark_of(const lessons::Lesson& lesson) {
  std::uint64_t hash = 0xcbf29ce484222325U;
  for (const char c : lessons::write_lesson(lesson)) {
    hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3U;
  }
  std::array<char, 17> text{};
  std::snprintf(text.data(), text.size(), "%016llx", static_cast<unsigned long long>(hash));
  return text.data();
}

json place_entry(const State& state, const std::string& mark) {
  json desks = json::object();
  for (std::size_t i = 0; i < state.desks.size(); ++i) {
    if (state.desks[i]) {
      desks[state.lesson->problems[i].id] = desk_json(state.lesson->problems[i], *state.desks[i]);
    }
  }
  return {{"text", mark},
          {"lesson", state.lesson_path},
          {"title", state.lesson->title},
          {"problem", state.lesson->problems[state.problem].id},
          {"desks", desks}};
}

/// The places in a file, the newest first; a file of the first version is one of them. Null: it is damaged.
const json* places_in(const json& read) {
  if (!read.is_object() || !read.contains("place")) {
    return nullptr;
  }
  Entries entries(read);
  return entries.list("lessons");
}

/// The place of this very lesson or, where its text has changed, of the file that it was read from.
const json* place_of(const json& places, const State& fresh) {
  const std::string mark = mark_of(*fresh.lesson);
  const json* of_file = nullptr;
  for (const json& place : places) {
    if (!place.is_object()) {
      continue;
    }
    Entries entries(place);
    const auto path = entries.text("lesson");
    if (entries.text("text") == mark) {
      return &place;
    }
    const bool is_same_file = !fresh.lesson_path.empty() && path == fresh.lesson_path;
    if (of_file == nullptr && is_same_file && entries.text("title") == fresh.lesson->title) {
      of_file = &place;
    }
  }
  return of_file;
}

/// JSON as the text of a file. What is no UTF-8, as a path may be, is replaced.
std::string file_text(const json& value) { return value.dump(2, ' ', false, json::error_handler_t::replace) + "\n"; }

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
  json text = {{"settings", settings_version},
               {"theme", theme},
               {"reduced_motion", settings.reduced_motion},
               {"speed", speed},
               {"letter_keys", settings.letter_keys},
               {"full_screen", settings.full_screen}};
  if (settings.notation) {
    text["notation"] = algebra::words_for(*settings.notation);
  }
  if (!settings.print_folder.empty()) {
    text["print_folder"] = settings.print_folder;
  }
  return file_text(text);
}

Result<Settings, std::string> read_settings(std::string_view text) {
  const json read = json::parse(text, nullptr, false);
  if (!read.is_object() || !read.contains("settings")) {
    return failure(std::string("The settings file is damaged: it should be a JSON object with \"settings\": 1."));
  }
  Entries entries(read);
  Settings settings;
  const auto theme = entries.text("theme");
  for (const ThemeWord& row : theme_words) {
    if (theme == row.word) {
      settings.theme = row.theme;
    }
  }
  settings.reduced_motion = entries.flag("reduced_motion").value_or(settings.reduced_motion);
  settings.letter_keys = entries.flag("letter_keys").value_or(settings.letter_keys);
  settings.full_screen = entries.flag("full_screen").value_or(settings.full_screen);
  const auto speed = entries.text("speed");
  for (const SpeedWord& row : speed_words) {
    if (speed == row.word) {
      settings.speed = row.speed;
    }
  }
  if (const auto words = entries.texts("notation")) {
    algebra::ClassNotation notation;
    for (const std::string& word : *words) {
      notation = algebra::with_word(notation, word).value_or(notation);
    }
    settings.notation = notation;
  }
  settings.print_folder = entries.text("print_folder").value_or("");
  if (entries.has_fault()) {
    return failure(std::string("The settings file is damaged: an entry has the wrong type."));
  }
  return settings;
}

std::string place_text(const State& state, std::string_view kept) {
  const std::string mark = mark_of(*state.lesson);
  json places = json::array({place_entry(state, mark)});
  const json read = json::parse(kept, nullptr, false);
  if (const json* others = places_in(read)) {
    for (const json& place : *others) {
      const bool is_this = place.is_object() && Entries(place).text("text") == mark;
      if (place.is_object() && !is_this && places.size() < most_lessons) {
        places.push_back(place);
      }
    }
  }
  return file_text({{"place", place_version}, {"lessons", places}});
}

Result<State, std::string> at_place(State fresh, std::string_view text) {
  const json read = json::parse(text, nullptr, false);
  if (!read.is_object() || !read.contains("place")) {
    return failure(std::string("The saved place is damaged: it should be a JSON object with \"place\": 2."));
  }
  const json wrapped = read.contains("lessons") ? json() : json{{"place", place_version}, {"lessons", {read}}};
  const json* places = places_in(wrapped.is_null() ? read : wrapped);
  const std::string wrong = "The saved place is damaged: an entry is missing or has the wrong type.";
  if (places == nullptr) {
    return failure(wrong);
  }
  const json* place = place_of(*places, fresh);
  if (place == nullptr) {
    return fresh;
  }
  Entries entries(*place);
  const auto problem_id = entries.text("problem");
  const json* desks = entries.object("desks");
  if (!problem_id || desks == nullptr) {
    return failure(wrong);
  }
  for (std::size_t i = 0; i < fresh.desks.size(); ++i) {
    const lessons::Problem& problem = fresh.lesson->problems[i];
    if (const auto kept = desks->find(problem.id); kept != desks->end()) {
      fresh.desks[i] = kept->is_object() ? desk_from(*kept, problem) : std::nullopt;
      if (!fresh.desks[i]) {
        return failure(wrong);
      }
    }
    if (*problem_id == problem.id) {
      fresh.problem = i;
    }
  }
  if (!fresh.desks[fresh.problem]) {
    fresh.desks[fresh.problem] = fresh_desk(fresh.current());
  }
  return fresh;
}

}  // namespace fw::state
