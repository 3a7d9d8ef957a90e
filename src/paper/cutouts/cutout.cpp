#include "paper/cutouts/cutout.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>

#include "lessons/open_faces.hpp"
#include "paper/cutouts/tabs.hpp"
#include "paper/cutouts/teeth.hpp"
#include "practice/quiz.hpp"
#include "solids/body/body_nets.hpp"

namespace fw::paper {
namespace {

using nets::HingeTree;
using words::message;

constexpr std::size_t most_listed = 5'000;
constexpr std::size_t most_drawn = 2'000;  // at random, where there are more
constexpr std::size_t most_tabbed = 20;
constexpr double small_solid = 20;         // millimeters: it may be enlarged
constexpr double largest_count = 400'000;  // of nets with faces told apart, that are gone through

/// How it fits, upright or lying.
struct PageFit {
  Fit fit;
  bool lies = false;
};
PageFit page_fit(const FlatNet& net, const CutoutWish& wish) {
  const Polygon hull = convex_hull(corners_of(net));
  const figures::Rect box = figures::bounding_rect(hull);
  if (box.w <= wish.width && box.h <= wish.height) {
    return {{std::min(wish.width / box.w, wish.height / box.h), 0}, false};  // straight, where it has room
  }
  const Fit upright = best_fit(hull, wish.width, wish.height);
  const Fit lying = best_fit(hull, wish.lying_width, wish.lying_height);
  return lying.scale > upright.scale * (1 + 1e-9) ? PageFit{lying, true} : PageFit{upright, false};
}

double largest_scale(const FlatNet& net, const CutoutWish& wish) {
  const Polygon hull = convex_hull(corners_of(net));
  return std::max(best_fit(hull, wish.width, wish.height).scale,
                  best_fit(hull, wish.lying_width, wish.lying_height).scale);
}

bool lies_free(const solids::Body& body, const HingeTree& tree) {
  return nets::overlapping(solids::unfolded(body, tree)).empty();
}

/// The nets to choose from, the usual one first.
std::vector<HingeTree> nets_of(const lessons::Problem& problem, const std::vector<FaceId>& open, bool only_usual) {
  const solids::Body& body = problem.solid.body();
  const HingeTree& usual = problem.solid.classic_net();
  std::vector<HingeTree> all{usual};
  const auto take = [&](HingeTree tree) {
    if (!(tree == usual)) all.push_back(std::move(tree));
  };
  if (solids::has_other_nets(body) && (!only_usual || !open.empty())) {
    for (const FaceId face : usual.order()) {
      for (const EdgeId edge : solids::possible_hinges(body, usual, face)) {
        if (auto tree = solids::moved(body, usual, face, edge)) take(std::move(tree).value());
      }
    }
    const bool can_list = solids::can_list_nets(body) && solids::labelled_count_estimate(body) < largest_count;
    if (can_list) {
      for (HingeTree& tree : solids::distinct_nets(body, usual.root(), most_listed).nets) take(std::move(tree));
    } else {
      practice::Seed seed{1};
      for (std::size_t i = 0; i < most_drawn; ++i) take(practice::random_net(body, usual.root(), seed));
    }
  }
  all.erase(std::remove_if(all.begin(), all.end(),
                           [&](const HingeTree& tree) {
                             return std::any_of(open.begin(), open.end(),
                                                [&](FaceId face) { return !is_leaf(body, tree, face); });
                           }),
            all.end());
  return all;
}

Vec2 size_of(const FlatNet& net) {
  Vec2 high{};
  for (const Vec2& p : corners_of(net)) high = glm::max(high, p);
  return high;
}

/// What has to be large enough to be cut, in the solid's unit.
struct Measures {
  double shortest = 0, longest = 0;
  std::optional<double> across;  ///< of the smallest circle
};
Measures measures_of(const solids::Solid& solid) {
  const solids::Body& body = solid.body();
  std::vector<double> lengths;
  Measures measures;
  if (body.is_flat_faced()) {
    lengths = body.edge_lengths();
  } else {
    const FlatNet net = flat_net(body, solid.classic_net(), 1, {});
    for (const FlatNet::Straight& side : net.straights) {
      const Polygon& face = net.faces[side.at.face.index()];
      lengths.push_back(glm::length(face[(side.at.side + 1) % face.size()] - face[side.at.side]));
    }
    for (const Rim& rim : net.rims) {
      const double across = geometry::perimeter(rim.on_disk) / std::numbers::pi;
      measures.across = std::min(across, measures.across.value_or(across));
      measures.longest = std::max(measures.longest, across);
    }
  }
  measures.shortest = *std::min_element(lengths.begin(), lengths.end());
  measures.longest = std::max(measures.longest, *std::max_element(lengths.begin(), lengths.end()));
  return measures;
}

/// A net with how large it could be without tabs.
struct Rated {
  std::size_t index = 0;
  double largest = 0;
};

class Choosing {
 public:
  Choosing(const lessons::Problem& problem, const CutoutWish& wish)
      : problem_(problem),
        wish_(wish),
        body_(problem.solid.body()),
        open_(lessons::open_faces(problem)),
        unit_(mm_per_unit(problem.solid)),
        measures_(measures_of(problem.solid)),
        trees_(nets_of(problem, open_, wish.only_usual_net)) {
    for (std::size_t i = 0; i < trees_.size(); ++i) {
      rated_.push_back({i, largest_scale(flat_net(body_, trees_[i], unit_, open_), wish_)});
    }
    std::stable_sort(rated_.begin(), rated_.end(),
                     [](const Rated& a, const Rated& b) { return a.largest > b.largest * (1 + 1e-9); });
  }

  [[nodiscard]] Result<Cutout, words::Message> best() const {
    if (trees_.empty()) {
      return failure(message("Without its open faces, this solid has no net in one piece."));
    }
    if (wish_.scale) {
      return at_scale(*wish_.scale);
    }
    for (const PaperScale& scale : usual_scales(measures_.longest * unit_ < small_solid)) {
      if (const auto cutout = on_one_page(scale)) {
        return can_be_cut(scale) ? Result<Cutout, words::Message>(*cutout) : too_small(scale);
      }
    }
    return too_small(usual_scales(false).back());
  }

 private:
  [[nodiscard]] bool can_be_cut(const PaperScale& scale) const {
    const double factor = unit_ * scale.factor();
    return measures_.shortest * factor >= least_side - 1e-9 &&
           (!measures_.across || *measures_.across * factor >= least_across - 1e-9);
  }

  [[nodiscard]] Result<Cutout, words::Message> too_small(const PaperScale& scale) const {
    const double for_sides = least_side / (measures_.shortest * unit_);
    const double for_circles = measures_.across ? least_across / (*measures_.across * unit_) : 0;
    const double needed = std::max(for_sides, for_circles);
    const int thing = needed >= 1 ? 1 : static_cast<int>(std::floor(1 / needed));
    const int paper = needed >= 1 ? static_cast<int>(std::ceil(needed)) : 1;
    const std::string least = std::to_string(paper) + ":" + std::to_string(thing);
    return failure(for_circles > for_sides
                       ? message("At {scale}, a circle is too small to cut. Use --scale {least} or larger.",
                                 {{"scale", scale.text()}, {"least", least}})
                       : message("At {scale}, the shortest side is too short to cut. Use --scale {least} or larger.",
                                 {{"scale", scale.text()}, {"least", least}}));
  }

  [[nodiscard]] Cutout made(const HingeTree& tree, const PaperScale& scale) const {
    FlatNet net = flat_net(body_, tree, unit_ * scale.factor(), open_);
    add_tabs(net);
    add_teeth(net);
    return {tree, std::move(net), scale};
  }

  /// The best of the nets that fit at this scale; nothing where none does.
  [[nodiscard]] std::optional<Cutout> on_one_page(const PaperScale& scale) const {
    std::optional<Cutout> best;
    std::size_t tried = 0;
    const auto consider = [&](std::size_t index) {
      if (!lies_free(body_, trees_[index])) return;
      ++tried;
      Cutout cutout = made(trees_[index], scale);
      const PageFit fit = page_fit(cutout.net, wish_);
      const bool is_better = !best || cutout.net.taped() < best->net.taped();
      if (fit.fit.scale < 1 - 1e-9 || !is_better) return;
      const double angle = upright(cutout.net, fit.fit.angle_rad);
      cutout.net = placed(std::move(cutout.net), angle);
      cutout.size = size_of(cutout.net);
      cutout.lies = fit.lies;
      cutout.is_usual = trees_[index] == problem_.solid.classic_net();
      best = std::move(cutout);
    };
    const auto fits = [&](const Rated& one) { return one.largest >= scale.factor() * (1 - 1e-9); };
    for (const Rated& one : rated_) {
      if (one.index == 0 && fits(one)) consider(0);  // the usual one, where it is among them
    }
    for (const Rated& one : rated_) {
      const bool is_done = (best && best->net.taped() == 0) || tried >= most_tabbed;
      if (!is_done && one.index != 0 && fits(one)) consider(one.index);
    }
    return best;
  }

  /// On the fewest pages: turned as it would be largest on one, or straight.
  [[nodiscard]] Cutout tiled(const Cutout& cutout) const {
    std::optional<Cutout> best;
    const auto count = [](double length, double room) {
      return static_cast<std::size_t>(std::max(1.0, std::ceil((length - tile_overlap) / (room - tile_overlap) - 1e-9)));
    };
    constexpr double quarter = std::numbers::pi / 2;
    const std::array<PageFit, 4> straight{PageFit{{1, 0}, false}, PageFit{{1, 0}, true}, PageFit{{1, quarter}, false},
                                          PageFit{{1, quarter}, true}};
    std::vector<PageFit> fits{straight.begin(), straight.end()};
    // A row of teeth that lies straight is cut across less often.
    fits.insert(cutout.net.rims.empty() ? fits.begin() : fits.end(), page_fit(cutout.net, wish_));
    for (const PageFit& fit : fits) {
      Cutout one = cutout;
      one.net = placed(cutout.net, upright(cutout.net, fit.fit.angle_rad));
      one.size = size_of(one.net);
      one.lies = fit.lies;
      one.columns = count(one.size.x, one.lies ? wish_.lying_width : wish_.width);
      one.rows = count(one.size.y, one.lies ? wish_.lying_height : wish_.height);
      if (!best || one.columns * one.rows < best->columns * best->rows) best = std::move(one);
    }
    return std::move(*best);
  }

  [[nodiscard]] Result<Cutout, words::Message> at_scale(const PaperScale& scale) const {
    if (!can_be_cut(scale)) {
      return too_small(scale);
    }
    if (auto one = on_one_page(scale)) {
      return std::move(*one);
    }
    std::optional<Cutout> best;
    for (std::size_t i = 0, tried = 0; i < rated_.size() && tried < most_tabbed; ++i) {
      if (!lies_free(body_, trees_[rated_[i].index])) continue;
      ++tried;
      Cutout cutout = made(trees_[rated_[i].index], scale);
      cutout.is_usual = trees_[rated_[i].index] == problem_.solid.classic_net();
      cutout = tiled(cutout);
      if (!best || cutout.columns * cutout.rows < best->columns * best->rows) best = std::move(cutout);
    }
    if (!best || best->columns * best->rows > most_tiles) {
      return failure(message("At {scale}, this net takes more than {most} pages. Pick a smaller scale.",
                             {{"scale", scale.text()}, {"most", most_tiles}}));
    }
    return std::move(*best);
  }

  const lessons::Problem& problem_;
  CutoutWish wish_;
  const solids::Body& body_;
  std::vector<FaceId> open_;
  double unit_ = 1;
  Measures measures_;
  std::vector<HingeTree> trees_;
  std::vector<Rated> rated_;
};

}  // namespace

std::vector<PaperScale> usual_scales(bool is_small) {
  std::vector<PaperScale> scales;
  if (is_small) {
    scales = {{10, 1}, {5, 1}, {3, 1}, {2, 1}};
  }
  for (const int thing : {1, 2, 3, 4, 5, 10, 20, 25, 50, 100, 200, 500, 1000}) {
    scales.push_back({1, thing});
  }
  return scales;
}

double mm_per_unit(const solids::Solid& solid) {
  constexpr double mm_per_meter = 1000;
  constexpr double without_unit = 10;
  const units::Unit unit = solid.unit();
  return unit == units::Unit::none() ? without_unit : unit.factor().to_double() * mm_per_meter;
}

Result<Cutout, words::Message> best_cutout(const lessons::Problem& problem, const CutoutWish& wish) {
  return Choosing(problem, wish).best();
}

}  // namespace fw::paper
