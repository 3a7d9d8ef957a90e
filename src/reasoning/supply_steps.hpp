#pragma once

#include "reasoning/supply.hpp"

// The steps of a word problem as they are written.
namespace fw::reasoning {

/// A number with or without a unit, and where it comes from.
struct SupplyNumber {
  exact::Number value;
  std::optional<units::Unit> unit = std::nullopt;
  std::optional<std::size_t> source = std::nullopt;
  std::string text = "";                             ///< as written; empty: as shown
  std::optional<exact::Shown> shown = std::nullopt;  ///< as a line before shows it
};

/// Shown within `places`, and with more of them where a number that is not whole would look whole: 3.001.
[[nodiscard]] exact::Shown shown_apart(const exact::Number& number, int places);

/// "12 cm", "about 12.37 cm": in a sentence.
[[nodiscard]] Message about(const exact::Shown& number, const std::string& unit);

/// Writes the steps of a word problem one after another; what a step comes out with is a source for those after it.
class SupplySteps {
 public:
  SupplySteps(SupplyWork& work, int places) : work_(&work), places_(places) {}

  [[nodiscard]] std::size_t add_source(Source::Kind kind, Message sentence, std::vector<FaceId> faces = {});
  /// As it is written or was shown before; else to the end where it ends soon, and an amount that does not with one
  /// more decimal than an answer, so that what is worked out of it comes out right.
  [[nodiscard]] exact::Shown shown(const SupplyNumber& number) const;
  [[nodiscard]] std::string digits(const SupplyNumber& number) const { return shown(number).text; }
  /// The number that a reader sees; the number itself where that would be 0.
  [[nodiscard]] exact::Number as_printed(const SupplyNumber& number) const;
  [[nodiscard]] algebra::Notation notation(const SupplyNumber& number) const;
  /// "a × b = result". `sign` is "×", "÷" or "−"; the aside is put beside it where the head cannot do it.
  SupplyNumber work_out(StepKind kind, const Message& reason, const SupplyNumber& a, const std::string& sign,
                        const SupplyNumber& b, SupplyNumber result);
  /// "left = result"; `shown_exact` is false where the left side is shown rounded.
  SupplyNumber state(StepKind kind, const Message& reason, algebra::Notation left, bool shown_exact,
                     SupplyNumber result);
  /// The same where the numbers on the left come to `printed` as they stand there: the result is shown with as many
  /// decimals as a reader gets who works them out.
  SupplyNumber state_worked(StepKind kind, const Message& reason, algebra::Notation left, const exact::Number& printed,
                            SupplyNumber result);
  /// A step of words alone.
  Step& say(StepKind kind, const Message& reason);
  /// The last step stands on the line of the one before it on the board.
  void join(Step::OnBoard how) { work_->steps.back().on_board = how; }
  /// Beside the last step.
  void add_aside(std::optional<exact::ColumnWork> aside);
  [[nodiscard]] int places() const { return places_; }
  [[nodiscard]] SupplyWork& work() { return *work_; }

 private:
  SupplyWork* work_;
  int places_;
};

/// Whether a × b, a ÷ b or a − b is more than the head can do, and can be written in columns.
[[nodiscard]] std::optional<exact::ColumnWork> aside_of(const exact::Number& a, const std::string& sign,
                                                        const exact::Number& b, int places);

/// An amount in the unit of one item, in one or two steps; none where the units are the same.
[[nodiscard]] SupplyNumber converted(SupplySteps& steps, const SupplyNumber& amount, const units::Unit& unit);

}  // namespace fw::reasoning
