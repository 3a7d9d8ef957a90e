#include "tasks/word_problems/cut_plan.hpp"

#include <algorithm>

#include "exact/print_number.hpp"
#include "reasoning/amounts.hpp"

namespace fw::tasks {
namespace {

using exact::Number;

constexpr std::size_t most_cut_steps = 50'000;

// Packs item by item, each filled so that no further piece fits in; the longest piece that is left goes first, since it
// must go somewhere.
class CutSearch {
 public:
  CutSearch(const std::vector<PieceKind>& pieces, const Number& item) : pieces_(&pieces), item_(item) {
    for (const PieceKind& piece : pieces) {
      left_.push_back(piece.count);
    }
  }

  // The best plan; nothing where the search was cut off before it was settled.
  std::optional<std::vector<std::vector<std::size_t>>> best() {
    best_items_ = first_fit();
    next_item();
    return steps_ > most_cut_steps && best_items_ > bound(0) ? std::nullopt : std::optional(best_);
  }

 private:
  [[nodiscard]] std::optional<std::size_t> longest_left() const {
    for (std::size_t i = 0; i < left_.size(); ++i) {
      if (left_[i] > 0) {
        return i;
      }
    }
    return std::nullopt;
  }
  [[nodiscard]] Number length_left() const {
    Number length;
    for (std::size_t i = 0; i < left_.size(); ++i) {
      length = length + Number::whole(static_cast<long long>(left_[i])) * (*pieces_)[i].length;
    }
    return length;
  }
  // As many items as their length alone takes, beside those that are cut already.
  [[nodiscard]] std::size_t bound(std::size_t cut) const {
    const Number quotient = length_left() / item_;
    const Number down = exact::floor(quotient);
    return cut + static_cast<std::size_t>(down.to_double()) + (down == quotient ? 0U : 1U);
  }

  // Each item takes the longest piece that fits, again and again: never the worst plan, often the best.
  std::size_t first_fit() {
    std::vector<std::size_t> left = left_;
    best_.clear();
    while (std::any_of(left.begin(), left.end(), [](std::size_t count) { return count > 0; })) {
      std::vector<std::size_t> cut(left.size(), 0);
      Number rest = item_;
      for (std::size_t i = 0; i < left.size(); ++i) {
        while (left[i] > 0 && (*pieces_)[i].length <= rest) {
          rest = rest - (*pieces_)[i].length;
          --left[i];
          ++cut[i];
        }
      }
      best_.push_back(std::move(cut));
    }
    return best_.size();
  }

  void next_item() {
    const auto first = longest_left();
    if (!first) {
      if (cuts_.size() < best_items_) {
        best_items_ = cuts_.size();
        best_ = cuts_;
      }
      return;
    }
    if (bound(cuts_.size()) >= best_items_ || ++steps_ > most_cut_steps) {
      return;
    }
    cuts_.emplace_back(left_.size(), 0);
    take(*first);
    fill(*first, item_ - (*pieces_)[*first].length);
    give_back(*first);
    cuts_.pop_back();
  }

  // Fills the item that is being cut with pieces of this kind and the shorter ones; the fullest ways come first.
  void fill(std::size_t kind, const Number& rest) {
    if (kind == left_.size()) {
      if (++steps_ <= most_cut_steps && !fits_one_more(rest)) {
        next_item();
      }
      return;
    }
    const Number fit = exact::floor(rest / (*pieces_)[kind].length);
    const std::size_t most = std::min(left_[kind], static_cast<std::size_t>(fit.to_double()));
    for (std::size_t i = 0; i < most; ++i) {
      take(kind);
    }
    for (std::size_t taken = most + 1; taken-- > 0;) {
      if (steps_ <= most_cut_steps) {
        fill(kind + 1, rest - Number::whole(static_cast<long long>(taken)) * (*pieces_)[kind].length);
      }
      if (taken > 0) {
        give_back(kind);
      }
    }
  }
  [[nodiscard]] bool fits_one_more(const Number& rest) const {
    for (std::size_t i = 0; i < left_.size(); ++i) {
      if (left_[i] > 0 && (*pieces_)[i].length <= rest) {
        return true;
      }
    }
    return false;
  }
  void take(std::size_t kind) {
    --left_[kind];
    ++cuts_.back()[kind];
  }
  void give_back(std::size_t kind) {
    ++left_[kind];
    --cuts_.back()[kind];
  }

  const std::vector<PieceKind>* pieces_;  // from the longest on
  Number item_;
  std::vector<std::size_t> left_;
  std::vector<std::vector<std::size_t>> cuts_, best_;
  std::size_t best_items_ = 0;
  std::size_t steps_ = 0;
};

}  // namespace

std::optional<CutPlan> least_cuts(const std::vector<PieceKind>& pieces, const Number& item) {
  std::size_t count = 0;
  CutPlan plan;
  for (const PieceKind& piece : pieces) {
    count += piece.count;
    plan.joined = plan.joined + Number::whole(static_cast<long long>(piece.count)) * piece.length / item;
    if (item < piece.length || piece.length.sign() <= 0) {
      return std::nullopt;
    }
  }
  if (count > most_pieces) {
    return std::nullopt;
  }
  std::vector<std::size_t> order(pieces.size());
  for (std::size_t i = 0; i < order.size(); ++i) {
    order[i] = i;
  }
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return pieces[b].length < pieces[a].length; });
  std::vector<PieceKind> sorted;
  for (const std::size_t kind : order) {
    sorted.push_back(pieces[kind]);
  }
  const auto best = CutSearch(sorted, item).best();
  if (!best) {
    return std::nullopt;
  }
  for (const std::vector<std::size_t>& cut : *best) {
    std::vector<std::size_t> by_kind(pieces.size(), 0);
    for (std::size_t i = 0; i < order.size(); ++i) {
      by_kind[order[i]] = cut[i];
    }
    const auto same =
        std::find_if(plan.cuts.begin(), plan.cuts.end(), [&](const Cut& other) { return other.pieces == by_kind; });
    if (same == plan.cuts.end()) {
      plan.cuts.push_back({by_kind, 1});
    } else {
      ++same->items;
    }
  }
  plan.items = best->size();
  return plan;
}

std::vector<PieceKind> edge_pieces(const solids::Solid& solid, const units::Unit& unit) {
  std::vector<PieceKind> pieces;
  const Number factor = units::conversion(solid.unit(), unit);
  for (const reasoning::AlikeAddend& addend : reasoning::all_edges(solid, 2).addends) {
    pieces.push_back({addend.each * factor, addend.times});
  }
  return pieces;
}

}  // namespace fw::tasks
