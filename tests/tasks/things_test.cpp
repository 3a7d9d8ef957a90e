#include "support/sanitized.hpp"
#include "tasks/things/thing.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <cstddef>
#include <iterator>
#include <set>
#include <utility>

#include "exact/print_number.hpp"
#include "lessons/asked_value.hpp"
#include "lessons/open_faces.hpp"
#include "practice/figure.hpp"
#include "practice/task_type.hpp"
#include "tasks/generate/draw.hpp"
#include "tasks/generate/generate.hpp"
#include "tasks/generate/made_up.hpp"
#include "tasks/word_problems/cut_pieces.hpp"

// Made-up problems could be true: things in their sizes, told in plain sentences, and each level asks more.
namespace fw::tasks::things_test {
namespace {

using lessons::Problem;

TEST(Things, AreSixtyOrMoreWithNamesOfTheirOwn) {
  std::set<std::string> names;
  for (const Thing& thing : things()) {
    EXPECT_TRUE(names.insert(thing.name).second) << thing.name;
    EXPECT_FALSE(thing.who.empty() || thing.forms.empty()) << thing.name;
  }
  EXPECT_GE(names.size(), 60U);
}

TEST(Things, AreCoveredAndFilledWithWhatIsInTheTables) {
  for (const Thing& thing : things()) {
    for (const auto* materials : {&thing.covers, &thing.sides, &thing.shell}) {
      for (const std::string& name : *materials) {
        EXPECT_EQ(material_named(name).name, name);
      }
    }
    for (const std::string& name : {thing.filling, thing.solid_of}) {
      EXPECT_TRUE(name.empty() || filling_named(name).name == name);
    }
    EXPECT_TRUE(thing.filling.empty() || thing.solid_of.empty()) << thing.name << " is hollow or solid";
  }
}

TEST(Things, ComeInSeveralSizesInEachUnit) {
  for (const Subject& subject : subjects()) {
    const std::size_t sizes = subject.family->sizes(*subject.form);
    EXPECT_GE(sizes, 4U) << subject.thing->name << " in " << subject.form->unit;
  }
}

TEST(Things, ArePackedWithItemsInTheTable) {
  const std::vector<PackedItem>& items = packed_items();
  for (const Thing& thing : things()) {
    for (const std::string& name : thing.packs) {
      EXPECT_TRUE(std::any_of(items.begin(), items.end(), [&](const PackedItem& item) { return item.name == name; }))
          << name << " in " << thing.name;
    }
  }
}

// The bounded measures of a drawn solid, in the order of the form's ranges.
std::vector<double> bounded(const Subject& subject, const solids::Solid& solid) {
  const auto value = [&](const char* name) { return solid.values().at(name).to_double(); };
  switch (subject.form->shape) {
    case Shape::Box:
      return {value("length"), value("width"), value("height")};
    case Shape::Block:
      return {value("edge")};
    case Shape::Isosceles:
      return {value("base.base"), value("base.height"), value("height")};
    case Shape::Right:
      return {value("base.legs.1"), value("base.legs.2"), value("height")};
    case Shape::Scalene:
      return {value("base.base"), value("base.height"), value("height")};
    case Shape::Trapezoid:
      return {value("base.bases.1"), value("base.height"), value("height")};
    case Shape::Rhombus:
      return {value("base.diagonals.1"), value("base.diagonals.2"), value("height")};
    case Shape::Spire:
      return {value("base.side"), value("height")};
    case Shape::Roof:
      return {value("base.length"), value("base.width"), value("height")};
    case Shape::Can:
    case Shape::Hat:
      return {value("radius"), value("height")};
  }
  return {};
}

TEST(Things, AreNeverDrawnOutsideOfTheirSizes) {
  Seed seed{7};
  for (const Subject& subject : subjects()) {
    for (int draw = 0; draw < 9; ++draw) {
      const auto description = subject.family->draw(seed, 1 + draw % 3, Labels::All, *subject.form);
      const auto solid = solids::Solid::make(description);
      ASSERT_TRUE(solid.has_value()) << subject.thing->name;
      EXPECT_TRUE(solid->remarks().empty()) << subject.thing->name;
      EXPECT_EQ(solid->faces().size(), subject.family->faces);
      const std::vector<double> measures = bounded(subject, *solid);
      for (std::size_t i = 0; i < measures.size(); ++i) {
        EXPECT_GE(measures[i], subject.form->sizes[i].least) << subject.thing->name << ", measure " << i;
        EXPECT_LE(measures[i], subject.form->sizes[i].most) << subject.thing->name << ", measure " << i;
      }
    }
  }
}

// ---- as they are told ----

std::vector<Problem> problems_of(const std::string& type, int level, std::size_t count, std::uint64_t seed = 4) {
  PracticeRequest request;
  request.types = {type};
  request.level = level;
  request.seed = seed;
  request.count = count;
  const auto lessons = generated(request);
  EXPECT_TRUE(lessons.has_value()) << type << " at level " << level << ": "
                                   << (lessons ? "" : words::said(lessons.error()));
  return lessons ? lessons->front().problems : std::vector<Problem>{};
}

std::size_t words_in(const std::string& text) {
  std::size_t words = 0;
  for (std::size_t i = 0; i < text.size(); ++i) {
    words += text[i] != ' ' && (i == 0 || text[i - 1] == ' ') ? 1U : 0U;
  }
  return words;
}

// Where the last sentence begins.
std::size_t last_sentence(const std::string& text) {
  const std::size_t end = text.rfind(". ", text.size() - 2);
  return end == std::string::npos ? 0 : end + 2;
}

TEST(Stories, AskOneQuestionAfterTwentyFiveWordsAtMost) {
  for (const practice::TypeName& type : type_names()) {
    for (int level = type.level; level <= 3; ++level) {
      for (const Problem& problem : problems_of(type.key, level, fw::test::cases(12, 4))) {
        const std::string& prompt = problem.prompt;
        EXPECT_LE(std::count(prompt.begin(), prompt.end(), '?'), 1) << prompt;
        EXPECT_TRUE(prompt.back() == '?' || prompt.back() == '.') << prompt;
        EXPECT_LE(words_in(prompt.substr(0, last_sentence(prompt))), 25U) << prompt;
        EXPECT_TRUE(std::isupper(static_cast<unsigned char>(prompt.front())) != 0) << prompt;
      }
    }
  }
}

// The sentence without its thing, its numbers and who does it.
std::string pattern_of(std::string prompt) {
  const auto blank = [&](const std::string& what) {
    for (std::size_t at = prompt.find(what); at != std::string::npos; at = prompt.find(what, at + 1)) {
      prompt.replace(at, what.size(), "_");
    }
  };
  for (const Thing& thing : things()) {
    blank(with_article(thing.name));
    blank(at_the_start(with_article(thing.name)));
    blank(thing.name);
    blank(thing.who);
    blank(at_the_start(thing.who));
  }
  for (const Material& material : materials()) {
    blank(material.name);
  }
  std::string pattern;
  std::copy_if(prompt.begin(), prompt.end(), std::back_inserter(pattern),
               [](char c) { return std::isdigit(static_cast<unsigned char>(c)) == 0; });
  return pattern;
}

TEST(Stories, ComeInThreeWordingsOrMore) {
  for (const practice::TypeName& type : type_names()) {
    std::set<std::string> patterns;
    for (std::uint64_t seed = 1; seed <= 3; ++seed) {
      for (const Problem& problem : problems_of(type.key, type.level, 8, seed)) {
        patterns.insert(pattern_of(problem.prompt));
      }
    }
    EXPECT_GE(patterns.size(), 3U) << type.key;
  }
}

// The words of a text, in small letters, without signs at their ends.
std::vector<std::string> words_of(const std::string& text) {
  std::vector<std::string> words(1);
  for (const char c : text) {
    if (c == ' ') {
      words.emplace_back();
    } else if (std::string(".,:?").find(c) == std::string::npos) {
      words.back() += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    }
  }
  return words;
}
bool repeats_a_phrase(const std::string& prompt) {
  constexpr std::size_t length = 4;
  const std::vector<std::string> words = words_of(prompt);
  std::set<std::vector<std::string>> phrases;
  for (std::size_t i = 0; i + length <= words.size(); ++i) {
    const auto first = words.begin() + static_cast<std::ptrdiff_t>(i);
    const std::vector<std::string> phrase(first, first + length);
    const bool has_number = std::any_of(phrase.begin(), phrase.end(), [](const std::string& word) {
      return !word.empty() && std::isdigit(static_cast<unsigned char>(word.front())) != 0;
    });
    if (!has_number && !phrases.insert(phrase).second) {
      return true;
    }
  }
  return false;
}
TEST(Stories, RepeatNoPhrase) {
  EXPECT_TRUE(repeats_a_phrase("It takes several bags to fill it. How many bags to fill it?"));
  for (const practice::TypeName& type : type_names()) {
    for (int level = type.level; level <= 3; ++level) {
      for (const Problem& problem : problems_of(type.key, level, fw::test::cases(12, 4))) {
        EXPECT_FALSE(repeats_a_phrase(problem.prompt)) << problem.prompt;
      }
    }
  }
}

// The thing that a prompt is about: of several names, the longest.
const Thing* thing_in(const std::string& prompt) {
  const Thing* found = nullptr;
  for (const Thing& thing : things()) {
    const bool is_named = prompt.find(thing.name) != std::string::npos;
    found = is_named && (found == nullptr || thing.name.size() > found->name.size()) ? &thing : found;
  }
  return found;
}
TEST(Stories, CopyNothingThatNobodyCopies) {
  for (const auto& [type, level] : {std::pair("copy", 2), std::pair("copy", 3), std::pair("factor", 3)}) {
    for (const Problem& problem : problems_of(type, level, 40)) {
      const Thing* thing = thing_in(problem.prompt);
      ASSERT_NE(thing, nullptr) << problem.prompt;
      EXPECT_FALSE(thing->has(IsLump)) << problem.prompt;
    }
  }
}
TEST(Stories, PutRibbonOnWhatIsSewn) {
  for (const int level : {1, 2}) {
    for (const Problem& problem : problems_of("edging", level, 40)) {
      const Thing* thing = thing_in(problem.prompt);
      ASSERT_NE(thing, nullptr) << problem.prompt;
      const bool is_sewn = std::find(thing->covers.begin(), thing->covers.end(), "fabric") != thing->covers.end();
      EXPECT_TRUE(!is_sewn || problem.prompt.find("ribbon") != std::string::npos) << problem.prompt;
    }
  }
}
TEST(Stories, AskForUnitsThatSuitTheSize) {
  for (const int level : {2, 3}) {
    for (const Problem& problem : problems_of("asked-unit", level, 40)) {
      const units::Unit unit = *practice::question_of(problem)->unit;
      const double amount = practice::question_of(problem)->truth->to_double();
      EXPECT_TRUE(unit.ascii() != "mm^2" || amount < 800'000) << problem.prompt << ' ' << amount;
      EXPECT_TRUE(unit.ascii() != "m^2" || amount >= 0.05) << problem.prompt << ' ' << amount;
    }
  }
}
TEST(Stories, CompareWithWhatHoldsSoMuch) {
  for (const int level : {2, 3}) {
    for (const Problem& problem : problems_of("same-number", level, 40)) {
      const std::string compared = problem.tasks.empty() ? "" : practice::stated(problem.tasks.front()).given_number();
      const auto amount = units::parse_quantity(compared);
      if (problem.prompt.find("jug holds") != std::string::npos) {
        ASSERT_TRUE(amount.has_value()) << compared;
        const units::Unit liter = *units::Unit::find("L");
        EXPECT_LE((amount->number.value * units::conversion(amount->unit, liter)).to_double(), 4) << problem.prompt;
      }
    }
  }
}

// ---- levels ----
// ---- levels ----

std::size_t foreign_units(const Problem& problem) {
  std::size_t count = 0;
  for (const auto& [key, value] : problem.description.fields) {
    const auto* length = std::get_if<solids::LengthEntry>(&value);
    count += length != nullptr && !(length->written->unit == problem.solid.unit()) ? 1U : 0U;
  }
  return count;
}
TEST(Levels, UnitsConvertOneLengthThenTwo) {
  for (const int level : {2, 3}) {
    for (const Problem& problem : problems_of("units", level, 20)) {
      EXPECT_EQ(foreign_units(problem), static_cast<std::size_t>(level - 1)) << problem.prompt;
    }
  }
}

bool is_boxy(const Problem& problem) { return problem.solid.traits().box_edges.has_value(); }
bool converts(const Problem& problem) {
  const lessons::Supply supply = *practice::question_of(problem)->supply;
  return !(supply.each->unit == problem.solid.unit().to_the(lessons::dimension_of(supply.purpose)));
}
TEST(Levels, FillingsConvertAtTheSecondAndFillPrismsAtTheThird) {
  for (int level = 1; level <= 3; ++level) {
    for (const Problem& problem : problems_of("fill", level, 20)) {
      EXPECT_EQ(converts(problem), level > 1) << problem.prompt;
      EXPECT_EQ(is_boxy(problem), level < 3) << problem.prompt;
    }
  }
}
TEST(Levels, EdgesAreConvertedAtTheSecondAndCutFromWholeRodsAtTheThird) {
  for (int level = 1; level <= 3; ++level) {
    for (const Problem& problem : problems_of("edging", level, 20)) {
      const bool is_cut = practice::task_as<CutPieces>(problem) != nullptr;
      EXPECT_EQ(is_cut, level == 3) << problem.prompt;
      EXPECT_EQ(converts(problem), level == 2) << problem.prompt;
      const auto question = practice::question_of(problem);
      // Dividing the length of all edges says too little.
      EXPECT_TRUE(!is_cut || question->packs->quotient + exact::Number::whole(1) <= question->packs->count)
          << problem.prompt;
    }
  }
}

TEST(Levels, OpenThingsLackMoreFacesAndThenHaveOtherBases) {
  for (int level = 1; level <= 3; ++level) {
    for (const Problem& problem : problems_of("open", level, 20)) {
      const std::size_t open = lessons::open_faces(problem).size();
      EXPECT_TRUE(level == 1 ? open == 1 : level == 2 ? open == 2 : open >= 1) << problem.prompt;
      EXPECT_EQ(is_boxy(problem), level < 3) << problem.prompt;
    }
  }
}

TEST(Levels, OpenThingsComeInEveryShapeThatLacksFaces) {
  for (const int level : {2, 3}) {
    std::set<std::string> things_told, ways;
    for (const Problem& problem : problems_of("open", level, 40)) {
      const Thing* thing = thing_in(problem.prompt);
      ASSERT_NE(thing, nullptr) << problem.prompt;
      things_told.insert(thing->name);
      ways.insert(problem.open.front().name);
    }
    EXPECT_GE(things_told.size(), level == 2 ? 4U : 6U) << "level " << level;
    EXPECT_GE(ways.size(), level == 2 ? 1U : 2U) << "level " << level;
  }
}

TEST(Levels, AmountsAreTheSameInHalfAndAreConvertedAtTheThird) {
  for (const int level : {2, 3}) {
    std::size_t same = 0;
    std::size_t told = 0;
    const std::vector<Problem> problems = problems_of("same-number", level, 40);
    for (const Problem& problem : problems) {
      const auto answer = practice::right_answer(problem);
      ASSERT_TRUE(answer.has_value());
      same += words::said(*answer).rfind("yes", 0) == 0 ? 1U : 0U;
      const exact::Shown number = exact::shown(*lessons::asked_value(problem, problem.solid, "volume"), 1);
      const exact::Shown area = exact::shown(*lessons::asked_value(problem, problem.solid, "surface_area"), 1);
      told +=
          problem.prompt.find(number.text) != std::string::npos || problem.prompt.find(area.text) != std::string::npos;
    }
    EXPECT_GE(same, 15U) << "level " << level;
    EXPECT_LE(same, 25U) << "level " << level;
    EXPECT_TRUE(level == 2 ? told == problems.size() : told < problems.size() / 2) << "told " << told;
  }
}

}  // namespace
}  // namespace fw::tasks::things_test
