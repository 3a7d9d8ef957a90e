#include <gtest/gtest.h>

#include <cmath>
#include <functional>

#include "figure_families.hpp"
#include "solids/completion.hpp"
#include "support/describe_solid.hpp"
#include "support/random.hpp"
#include "support/sanitized.hpp"

// What is written on a figure, judged by the checks that Solid::make runs before it builds anything.

namespace fw::solids::label_laws_test {
namespace {

constexpr int right_figures = static_cast<int>(test::cases(100000, 2000));
constexpr int spoilt_figures = static_cast<int>(test::cases(10000, 200));

/// A family with the program's own statement of it.
struct Stated {
  Family family;
  SolidStatement statement;
  std::vector<Measure> measures;  ///< beside the labels
  std::vector<bool> fixes;        ///< beside the labels: one of the lengths that fix the figure
  std::shared_ptr<Relations> relations;
};

Result<SolidStatement, std::vector<Fault>> statement_of(const std::string& text) {
  const test::Described described = test::described(text);
  const Kind& kind = *find_kind(described.description.kind);
  if (!kind.stands_on_base) {
    return kind.state(described.description, nullptr);
  }
  const auto shape =
      find_base_shape(described.description.base.front().kind)->state(described.description.base.front());
  return kind.state(described.description, &*shape);
}

const std::vector<Stated>& families() {
  static const std::vector<Stated> all = [] {
    std::vector<Stated> stated;
    for (Family& family : all_families()) {
      auto statement = statement_of(family.text);
      ensure(statement.has_value(), "a family of figures is not stated");
      Stated one{family, *statement, {}, {}, nullptr};
      one.family.symbols.insert(one.family.symbols.end(), of_the_whole.begin(), of_the_whole.end());
      for (const std::string& symbol : one.family.symbols) {
        const auto& measures = one.statement.measures;
        const auto found = std::find_if(measures.begin(), measures.end(),
                                        [&](const Measure& m) { return m.symbol.name == symbol && !m.key.empty(); });
        const int dimension = symbol == "volume" ? 3 : 2;
        one.measures.push_back(found != measures.end() ? *found
                                                       : Measure{{symbol, "", dimension}, known_title(symbol), symbol});
        const auto& fixing = one.family.fixing;
        one.fixes.push_back(std::find(fixing.begin(), fixing.end(), symbol) != fixing.end());
      }
      stated.push_back(std::move(one));
    }
    for (Stated& one : stated) {
      one.relations = std::make_shared<Relations>(one.statement);
    }
    return stated;
  }();
  return all;
}

Given label_of(const Stated& stated, std::size_t index, double value, int places) {
  const Measure& measure = stated.measures[index];
  const double scale = std::pow(10.0, places);
  const long long written = std::llround(value * scale);
  const auto power = static_cast<long long>(scale);
  Given given;
  given.symbol = measure.symbol;
  given.title = measure.title;
  given.key = measure.key;
  given.measure = (measure.in_base ? "base." : "") + measure.key;
  given.value = exact::Number::ratio(written, power);
  given.places = places;
  given.is_known = measure.symbol.dimension > 1;
  given.unit = units::Unit::centimeter().to_the(measure.symbol.dimension);
  given.to_written = exact::Number::whole(1);
  return given;
}

std::string told(const Stated& stated, const std::vector<Given>& givens) {
  std::string text = stated.family.text;
  for (const Given& given : givens) {
    text += "\n  " + given.symbol.name + " " + std::to_string(given.value.to_double()) + " to " +
            std::to_string(given.places) + " places";
  }
  return text;
}

// ---- correct labels are never refused ----

/// Whether a pyramid is no needle: its height at most six times the distance from the height's foot to a side.
bool is_drawn_in_textbooks(const Stated& stated, const LengthValues& all) {
  const auto& symbols = stated.family.symbols;
  const auto height = std::find(symbols.begin(), symbols.end(), "height");
  for (std::size_t i = 0; i < symbols.size(); ++i) {
    if (symbols[i].rfind("slant_height", 0) == 0) {
      const double h = all[static_cast<std::size_t>(height - symbols.begin())];
      if (h * h > 36 * (all[i] * all[i] - h * h)) {
        return false;
      }
    }
  }
  return true;
}

/// How the numbers of a figure come to be written.
enum class Writing {
  Whole,  ///< the lengths that fix the figure are whole and all written; the others are rounded, which the figure says
  Large,  ///< whatever lengths of 50 and more, all rounded to whole numbers, which the figure says
  Tenths,
  Hundredths,
};

struct Labels {
  std::vector<Given> givens;
  std::vector<std::size_t> indices;
};

Labels right_labels(const Stated& stated, Writing writing, test::Dice& dice) {
  LengthValues lengths = stated.family.choose(dice);
  for (double& length : lengths) {
    if (writing == Writing::Large) {
      length *= 17;
    } else if (writing == Writing::Whole || dice.below(5) == 0) {
      length = std::round(length);
    }
  }
  const LengthValues all = stated.family.labels(lengths);
  const double surface = all[all.size() - of_the_whole.size()];
  Labels labels;
  if (std::isnan(surface) || all.back() < 0.5 || !is_drawn_in_textbooks(stated, all)) {
    return labels;  // three sides may be no triangle any more once they are whole
  }
  const double part = dice.between(0.3, 1);
  const int places = writing == Writing::Tenths ? 1 : writing == Writing::Hundredths ? 2 : 0;
  // A problem gives one quantity of the whole; of a box or a cube it may give the volume beside another one.
  const bool may_give_two = stated.family.text.find("base ") == std::string::npos;
  int of_whole = 0;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const bool is_of_whole = stated.measures[i].symbol.dimension > 1;
    const bool is_one_too_many =
        is_of_whole && (of_whole == 2 || (of_whole == 1 && (!may_give_two || i + 1 < all.size())));
    const bool must_be_written = writing == Writing::Whole && stated.fixes[i];
    const bool is_too_small = std::isnan(all[i]) || (writing == Writing::Large && all[i] < 50);
    if (is_too_small || is_one_too_many || (!must_be_written && dice.between(0, 1) > part)) {
      continue;
    }
    const bool is_whole = stated.fixes[i] && all[i] == std::round(all[i]);
    labels.givens.push_back(label_of(stated, i, all[i], is_whole ? 0 : places));
    labels.givens.back().is_rounded = places == 0;
    labels.indices.push_back(i);
    of_whole += stated.measures[i].symbol.dimension > 1 ? 1 : 0;
  }
  return labels;
}

TEST(SlowLabelLaws, CorrectRoundingsAreNeverRefused) {
  test::Dice dice(20260);
  int refused = 0;
  int judged = 0;
  for (std::size_t attempt = 0; judged < right_figures; ++attempt) {
    const Stated& stated = families()[attempt % families().size()];
    const auto writing = static_cast<Writing>(dice.below(4));
    const Labels labels = right_labels(stated, writing, dice);
    if (labels.givens.empty()) {
      continue;
    }
    ++judged;
    const Verdict verdict = Consistency(*stated.relations, labels.givens).verdict();
    if (verdict.answer == Verdict::Answer::Impossible) {
      constexpr int most_told = 10;
      if (++refused <= most_told) {
        ADD_FAILURE() << told(stated, labels.givens) << "\n  writing " << static_cast<int>(writing);
      }
    }
  }
  EXPECT_EQ(refused, 0);
}

TEST(SlowLabelLaws, AWholeNumberIsExactUnlessTheFigureSaysItIsRounded) {
  test::Dice dice(515);
  constexpr int figures = 2000;
  int judged = 0;
  int taken = 0;
  for (std::size_t attempt = 0; judged < figures; ++attempt) {
    const Stated& stated = families()[attempt % families().size()];
    Labels labels = right_labels(stated, Writing::Whole, dice);
    LengthValues fixing;
    for (const std::string& name : stated.family.fixing) {
      for (const Given& given : labels.givens) {
        if (given.symbol.name == name) {
          fixing.push_back(given.value.to_double());
        }
      }
    }
    for (Given& given : labels.givens) {
      given.is_rounded = false;
    }
    if (fixing.empty() || fixing.size() != stated.family.fixing.size()) {
      continue;
    }
    const LengthValues all = stated.family.labels(fixing);
    bool is_off = false;
    for (std::size_t i = 0; i < labels.givens.size(); ++i) {
      const double off = std::abs(all[labels.indices[i]] - labels.givens[i].value.to_double());
      is_off = is_off || off > 0.01;
    }
    if (!is_off) {
      continue;
    }
    ++judged;
    taken += Consistency(*stated.relations, labels.givens).verdict().answer != Verdict::Answer::Impossible ? 1 : 0;
  }
  EXPECT_LE(taken, figures / 50);  // by chance they may be right for another figure, as when a trapezoid leans
}

// ---- spoilt labels are always found ----

/// Whether some figure of the family has all these labels within their rounding: near one that is named, by small
/// steps.
bool is_explained(const Stated& stated, const Labels& labels, LengthValues near, test::Dice& dice) {
  const auto excess = [&](const LengthValues& lengths) {
    const LengthValues all = stated.family.labels(lengths);
    double sum = 0;
    for (std::size_t i = 0; i < labels.givens.size(); ++i) {
      const double half = 0.5 * std::pow(10.0, -labels.givens[i].places);
      const double off = std::abs(all[labels.indices[i]] - labels.givens[i].value.to_double());
      // A tenth more is let pass: what rounding misses so narrowly no reader would call spoilt.
      const double beyond = std::max(off / half - 1.1, 0.0);
      sum += std::isnan(off) ? 1e300 : beyond * beyond;
    }
    return sum;
  };
  double best = excess(near);
  double stride = 1e-3;
  for (int step = 0; step < 20000 && best > 0; ++step) {
    LengthValues tried = near;
    for (double& length : tried) {
      length *= 1 + stride * dice.between(-1, 1);
    }
    const double here = excess(tried);
    if (here < best) {
      best = here;
      near = tried;
      stride = std::min(stride * 2, 0.1);
    } else {
      stride = std::max(stride * 0.9, 1e-8);
    }
  }
  return best <= 0;
}

/// The lengths that fix the figure, as the verdict has them.
LengthValues named_lengths(const Stated& stated, const Verdict& verdict) {
  LengthValues lengths;
  for (const std::string& symbol : stated.family.fixing) {
    lengths.push_back(verdict.values[stated.relations->slot(symbol)]);
  }
  return lengths;
}

TEST(SlowLabelLaws, EverySpoiltLabelIsFoundAndWhatWouldDoDoes) {
  test::Dice dice(3141);
  int found = 0;
  int explained = 0;
  int asked = 0;
  int remedied = 0;
  for (int attempt = 0; found < spoilt_figures; ++attempt) {
    const Stated& stated = families()[static_cast<std::size_t>(attempt) % families().size()];
    Labels labels;
    const LengthValues all = stated.family.labels(stated.family.choose(dice));
    const int places = dice.below(3) == 0 ? 1 : 2;
    bool is_over_determined = false;
    const double part = dice.between(0.2, 1);
    for (std::size_t i = 0; i < all.size(); ++i) {
      if (std::isnan(all[i]) || (!stated.fixes[i] && dice.between(0, 1) > part)) {
        continue;
      }
      is_over_determined = is_over_determined || !stated.fixes[i];
      labels.givens.push_back(label_of(stated, i, all[i], places));
      labels.indices.push_back(i);
    }
    if (!is_over_determined || !is_drawn_in_textbooks(stated, all)) {
      continue;
    }
    const std::size_t spoilt = dice.below(labels.givens.size());
    const double factor = dice.below(2) == 0 ? dice.between(1.1, 1.4) : dice.between(0.6, 0.9);
    labels.givens[spoilt] = label_of(stated, labels.indices[spoilt], all[labels.indices[spoilt]] * factor, places);
    const Consistency consistency(*stated.relations, labels.givens);
    const Verdict verdict = consistency.verdict();
    if (verdict.answer != Verdict::Answer::Impossible) {
      // By chance the labels may be right for another figure, as when a trapezoid leans the other way.
      ++explained;
      const Verdict together = consistency.verdict(Consistency::Judging::Together);
      EXPECT_TRUE(is_explained(stated, labels, named_lengths(stated, together), dice)) << told(stated, labels.givens);
      continue;
    }
    ++found;
    if (found % 3 != 0) {
      continue;  // a remedy takes much longer than a verdict
    }
    ++asked;
    const auto remedy = consistency.remedy({});
    if (!remedy) {
      continue;  // no value is named
    }
    ++remedied;
    Labels mended = labels;
    mended.givens[remedy->given] = label_of(stated, labels.indices[remedy->given], remedy->value, remedy->places);
    const Verdict now = Consistency(*stated.relations, mended.givens).verdict(Consistency::Judging::Together);
    const bool would_do = is_explained(stated, mended, named_lengths(stated, now), dice);
    EXPECT_TRUE(would_do) << told(stated, mended.givens);
    if (testing::Test::HasFailure()) {
      return;
    }
  }
  EXPECT_GE(remedied, asked * 98 / 100);
  EXPECT_LE(explained, found / 50);
}

}  // namespace
}  // namespace fw::solids::label_laws_test
