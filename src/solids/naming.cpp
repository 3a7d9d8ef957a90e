#include "solids/naming.hpp"

#include <algorithm>
#include <cctype>
#include <set>

#include "base/spelling.hpp"

namespace fw::solids {
namespace {

using Words = std::vector<std::string>;

/// A plural in s or ra ("polyhedra") is read as the singular.
std::string singular(std::string word) {
  const auto ends_with = [&](const std::string& ending) {
    return word.size() > ending.size() + 2 && word.compare(word.size() - ending.size(), ending.size(), ending) == 0;
  };
  if (ends_with("hedra")) {
    return word.substr(0, word.size() - 1) + "on";
  }
  if (ends_with("s") && !ends_with("ss") && !ends_with("us")) {
    word.pop_back();
  }
  return word;
}

/// Lower-case words without hyphens, articles and "a ... is"; "pyramid with a square base" turned into
/// "square based pyramid".
Words words_of(std::string_view text) {
  static const std::set<std::string> silent{"a", "an", "the", "it", "is", "its", "this", "of"};
  Words words;
  std::string word;
  const auto close = [&] {
    if (!word.empty() && silent.count(word) == 0) {
      words.push_back(singular(word));
    }
    word.clear();
  };
  for (const char c : text) {
    const auto letter = static_cast<unsigned char>(c);
    if (std::isalnum(letter) != 0) {
      word += static_cast<char>(std::tolower(letter));
    } else if (c != '\'') {
      close();
    }
  }
  close();
  const auto with = std::find(words.begin(), words.end(), "with");
  if (with != words.end() && with != words.begin() && words.end() - with > 2 && words.back() == "base") {
    Words turned(with + 1, words.end() - 1);
    turned.push_back("based");
    turned.insert(turned.end(), words.begin(), with);
    return turned;
  }
  for (std::string& part : words) {
    part = part == "base" ? "based" : part;
  }
  return words;
}

/// Equal but for one slip of spelling in a word of four letters or more.
bool alike(const Words& a, const Words& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const std::string& x, const std::string& y) {
    constexpr std::size_t shortest_with_slip = 4;
    return x == y || (std::min(x.size(), y.size()) >= shortest_with_slip && spelling_distance(x, y) <= 1);
  });
}

bool is_named(const Words& typed, const SolidStatement& statement) {
  if (alike(typed, words_of(statement.name))) {
    return true;
  }
  return std::any_of(statement.other_names.begin(), statement.other_names.end(),
                     [&](const std::string& name) { return alike(typed, words_of(name)); });
}

struct KnownSolid {
  SolidStatement statement;
  std::size_t faces;
  bool is_round;
};

Description regular_base(int count) {
  Description base = find_base_shape("regular polygon")->example;
  base.fields["count"] = count;
  return base;
}

/// The shelf, and each kind with a base on each regular polygon up to twelve corners.
const std::vector<KnownSolid>& known_solids() {
  static const std::vector<KnownSolid> all = [] {
    std::vector<Description> descriptions = shelf();
    for (const Kind& kind : kinds()) {
      constexpr int most_corners = 12;
      for (int count = 5; kind.stands_on_base && count <= most_corners; ++count) {
        Description description = kind.example;
        description.base = {regular_base(count)};
        descriptions.push_back(description);
      }
    }
    std::vector<KnownSolid> solids;
    for (const Description& description : descriptions) {
      if (const auto solid = Solid::make(description)) {
        solids.push_back({solid->statement(), solid->faces().size(), solid->traits().has_round_base});
      }
    }
    return solids;
  }();
  return all;
}

}  // namespace

NameVerdict judge_name(const Solid& solid, std::string_view typed) {
  const Words words = words_of(typed);
  if (words.empty()) {
    return NameVerdict::Unknown;
  }
  const SolidStatement& statement = solid.statement();
  if (is_named(words, statement)) {
    return NameVerdict::Right;
  }
  if (!statement.family.empty() && alike(words, words_of(statement.family))) {
    return NameVerdict::AskBase;
  }
  std::optional<std::string> family;
  for (const KnownSolid& known : known_solids()) {
    if (is_named(words, known.statement)) {
      const bool same = !statement.family.empty() && known.statement.family == statement.family;
      return same ? NameVerdict::WrongBase : NameVerdict::WrongFamily;
    }
    if (!known.statement.family.empty() && alike({words.back()}, words_of(known.statement.family))) {
      family = known.statement.family;
    }
  }
  if (!family) {
    return NameVerdict::Unknown;
  }
  if (*family != statement.family) {
    return NameVerdict::WrongFamily;
  }
  return NameVerdict::AskBase;  // the right family, and before it no word for a base
}

std::vector<std::string> names_with_face_count(std::size_t faces) {
  std::vector<std::string> names;
  const auto add = [&](const std::string& name) {
    if (std::find(names.begin(), names.end(), name) == names.end()) {
      names.push_back(name);
    }
  };
  for (const KnownSolid& known : known_solids()) {
    if (known.faces == faces) {
      add(known.statement.name);
    }
  }
  // Beyond the table: a base with one or two corners fewer than the solid has faces.
  constexpr std::size_t most_in_table = 13;
  for (const Kind& kind : kinds()) {
    for (std::size_t fewer = 1; faces > most_in_table && kind.stands_on_base && fewer <= 2; ++fewer) {
      Description description = kind.example;
      description.base = {regular_base(static_cast<int>(faces - fewer))};
      const auto solid = Solid::make(description);
      if (solid && solid->faces().size() == faces) {
        add(solid->name());
      }
    }
  }
  return names;
}

std::vector<std::string> names_beside(const Solid& solid) {
  const std::size_t faces = solid.faces().size();
  if (!solid.traits().has_round_base) {
    return names_with_face_count(faces);
  }
  std::vector<const KnownSolid*> all;
  for (const KnownSolid& known : known_solids()) {
    all.push_back(&known);
  }
  const auto apart = [&](const KnownSolid* known) {
    return std::max(known->faces, faces) - std::min(known->faces, faces);
  };
  std::stable_sort(all.begin(), all.end(), [&](const KnownSolid* a, const KnownSolid* b) {
    return a->is_round != b->is_round ? a->is_round : apart(a) < apart(b);
  });
  std::vector<std::string> names;
  constexpr std::size_t enough = 6;
  for (const KnownSolid* known : all) {
    const std::string& name = known->statement.name;
    const bool is_new = std::find(names.begin(), names.end(), name) == names.end();
    if (is_new && names.size() < enough && judge_name(solid, name) != NameVerdict::Right) {
      names.push_back(name);
    }
  }
  return names;
}

}  // namespace fw::solids
