#include <algorithm>

#include "practice/generate/net_sheets.hpp"
#include "practice/generate/types.hpp"
#include "solids/body/body_nets.hpp"

// Nets to name, to choose, to judge and to complete.
namespace fw::practice {
namespace {

using lessons::NetAsk;
using lessons::NetSheet;
using lessons::NetTask;
using lessons::Problem;
using nets::Cutout;
using nets::PieceId;

std::optional<Problem> on_solid(const Blueprint& blueprint, Seed& seed, const std::vector<std::string>& stories) {
  auto problem = made_problem(blueprint.family->draw(seed, blueprint.level, Labels::All, blueprint.unit), {}, "name",
                              told(stories, blueprint));
  if (problem) {
    problem->find.clear();
  }
  return problem;
}

bool is_net(const Problem& problem, const Cutout& cutout) {
  return solids::fold_test(problem.solid.body(), cutout).is_net();
}

std::optional<Problem> net_name(const Blueprint& blueprint, Seed& seed) {
  auto problem = on_solid(blueprint, seed,
                          {"A net for the fair lies on the table. Which solid does it fold into?",
                           "Somebody cut out this net and did not say what for. Name the solid."});
  auto sheet =
      problem ? drawn_sheet(problem->solid, drawn_net(problem->solid, seed), blueprint.level, seed) : std::nullopt;
  if (!sheet) {
    return std::nullopt;
  }
  problem->net = NetTask{NetAsk::Name, {std::move(*sheet)}};
  return problem;
}

// Of each family, in their order.
const std::vector<std::size_t>& face_counts() {
  static const std::vector<std::size_t> counts = [] {
    std::vector<std::size_t> all;
    for (const Family& family : families()) {
      Seed seed{1};
      const auto solid = solids::Solid::make(family.draw(seed, 1, Labels::All, "cm"));
      all.push_back(solid ? solid->faces().size() : 0);
    }
    return all;
  }();
  return counts;
}

// A net of another solid with as many faces, its pieces given by their corners.
std::optional<Cutout> look_alike(const Problem& problem, const Blueprint& blueprint, Seed& seed) {
  std::vector<const Family*> others;
  for (std::size_t i = 0; i < families().size(); ++i) {
    const Family& family = families()[i];
    if (family.level <= blueprint.level && &family != blueprint.family &&
        face_counts()[i] == problem.solid.faces().size()) {
      others.push_back(&family);
    }
  }
  shuffle(others, seed);
  for (const Family* family : others) {
    const auto other = made_problem(family->draw(seed, blueprint.level, Labels::All, blueprint.unit), {}, "name", "");
    if (other && other->solid.name() != problem.solid.name()) {
      return unmarked(drawn_net(other->solid, seed));
    }
  }
  return std::nullopt;
}

// Three cut-outs that are no nets, of different sorts as far as there are.
std::vector<NetSheet> wrong_sheets(const Problem& problem, const Blueprint& blueprint, Seed& seed) {
  constexpr std::size_t wanted = 3;
  constexpr std::size_t rounds = 3;
  constexpr std::ptrdiff_t most_of_one_sort = 2;
  std::vector<NetSheet> sheets;
  std::vector<nets::Misfit> misfits;
  std::vector<int> sorts{0, 1, 2};
  shuffle(sorts, seed);
  sorts.insert(sorts.begin(), 0);  // one that only folding finds out comes first
  if (blueprint.level == 1) {
    sorts.insert(sorts.begin() + 2, 3);
  }
  for (std::size_t i = 0; i < rounds * sorts.size() && sheets.size() < wanted; ++i) {
    const int sort = sorts[i % sorts.size()];
    const bool is_pointed = seed.below(2) == 0;
    std::optional<Cutout> cutout =
        sort == 0   ? drawn_trap(problem.solid, Trap::Moved, blueprint.level > 1, seed)
        : sort == 1 ? drawn_trap(problem.solid, is_pointed ? Trap::Short : Trap::Stretched, blueprint.level > 1, seed)
        : sort == 2 ? look_alike(problem, blueprint, seed)
                    : drawn_trap(problem.solid, Trap::Count, false, seed);
    auto sheet = cutout ? drawn_sheet(problem.solid, *cutout, blueprint.level, seed) : std::nullopt;
    const auto finding =
        sheet ? solids::fold_test(problem.solid.body(), sheet->cutout).finding : std::optional<nets::Finding>{};
    if (finding && std::count(misfits.begin(), misfits.end(), finding->misfit) < most_of_one_sort) {
      misfits.push_back(finding->misfit);
      sheets.push_back(std::move(*sheet));
    }
  }
  return sheets;
}

std::optional<Problem> choose_net(const Blueprint& blueprint, Seed& seed) {
  auto problem = on_solid(blueprint, seed,
                          {"Four pieces of card lie ready for {a thing}. Which one folds into the solid shown?",
                           "Only one of these cut-outs makes {a thing} like the one shown. Which one?"});
  auto right =
      problem ? drawn_sheet(problem->solid, drawn_net(problem->solid, seed), blueprint.level, seed) : std::nullopt;
  if (!right) {
    return std::nullopt;
  }
  std::vector<NetSheet> sheets = wrong_sheets(*problem, blueprint, seed);
  if (sheets.size() < 3) {
    return std::nullopt;
  }
  sheets.push_back(std::move(*right));
  shuffle(sheets, seed);
  problem->net = NetTask{NetAsk::Choose, std::move(sheets)};
  return problem;
}

std::optional<Problem> is_it_a_net(const Blueprint& blueprint, Seed& seed) {
  auto problem =
      on_solid(blueprint, seed,
               {"This card was cut out for {a thing}. Does it fold into the solid shown?",
                "Will this cut-out close to {a thing} like the one shown, with no gap? Decide before you fold."});
  if (!problem) {
    return std::nullopt;
  }
  // Every second one is a net; the others fail in turn for each of the reasons that the solid has.
  std::optional<Cutout> cutout;
  if (blueprint.trap % 2 == 0) {
    cutout = drawn_net(problem->solid, seed);
  } else {
    static const std::vector<Trap> traps{Trap::Moved, Trap::Stretched, Trap::Short, Trap::Count};
    const bool hard = blueprint.level > 1;
    cutout = drawn_trap(problem->solid, traps[blueprint.trap / 2 % traps.size()], hard, seed);
    cutout = cutout ? cutout : drawn_trap(problem->solid, Trap::Moved, hard, seed);
  }
  auto sheet = cutout ? drawn_sheet(problem->solid, *cutout, blueprint.level, seed) : std::nullopt;
  if (!sheet || is_net(*problem, sheet->cutout) != (blueprint.trap % 2 == 0)) {
    return std::nullopt;
  }
  problem->net = NetTask{NetAsk::IsIt, {std::move(*sheet)}};
  return problem;
}

// Where a piece can be tried: on each free edge once, by the edge that makes a net of it where there is one.
struct Places {
  std::vector<nets::Joint> right, wrong;
};
Places places_for(const Problem& problem, const Cutout& rest, const nets::Piece& piece) {
  Places places;
  for (const nets::PieceEdge& edge : nets::free_edges(rest)) {
    std::optional<nets::Joint> fitting;
    bool is_right = false;
    for (std::size_t by = 0; by < piece.shape.size() && !is_right; ++by) {
      const nets::Joint joint{edge.piece, edge.edge, by};
      const Cutout whole = nets::with(rest, {piece.shape, piece.copy_of, joint});
      const PieceId last = PieceId::at(whole.pieces().size() - 1);
      if (nets::equally_long(whole, edge, {last, by}) && nets::overlapping(whole).empty()) {
        is_right = is_net(problem, whole);
        fitting = is_right || !fitting ? joint : fitting;
      }
    }
    if (fitting) {
      (is_right ? places.right : places.wrong).push_back(*fitting);
    }
  }
  return places;
}

std::optional<Problem> complete_net(const Blueprint& blueprint, Seed& seed) {
  auto problem = on_solid(blueprint, seed,
                          {"One piece of the net for {a thing} is still missing. Along which edges can it be taped on?",
                           "The last piece of this net was left on the workbench. Find every edge where it could go."});
  constexpr int draws = 6;
  for (int i = 0; problem && i < draws; ++i) {
    const Cutout net = drawn_net(problem->solid, seed);
    std::vector<PieceId> leaves = nets::leaves(net);
    const PieceId leaf = leaves[seed.below(leaves.size())];
    const nets::Piece& piece = net.pieces()[leaf];
    const Cutout rest = nets::without(net, leaf);
    Places places = places_for(*problem, rest, piece);
    if (places.right.size() < 2 || places.right.size() > 4 || places.wrong.size() < 2) {
      continue;
    }
    auto sheet = drawn_sheet(problem->solid, rest, blueprint.level, seed);
    if (!sheet) {
      continue;
    }
    constexpr std::size_t most_places = 6;
    shuffle(places.wrong, seed);
    places.wrong.resize(std::min(places.wrong.size(), most_places - places.right.size()));
    std::vector<nets::Joint> all = places.right;
    all.insert(all.end(), places.wrong.begin(), places.wrong.end());
    std::sort(all.begin(), all.end(), [](const nets::Joint& a, const nets::Joint& b) {
      return std::pair(a.on, a.edge) < std::pair(b.on, b.edge);
    });
    problem->net = NetTask{NetAsk::Complete, {std::move(*sheet)}, lessons::PieceEntry{piece.copy_of}, std::move(all)};
    return problem;
  }
  return std::nullopt;
}

}  // namespace

std::vector<ProblemType> net_types() {
  return {
      {"net-name", "name from a net", 1, "fold a net", any, net_name},
      {"choose-net", "choose the net", 1, "fold a net", any, choose_net},
      {"is-net", "net or no net", 1, "fold a net", any, is_it_a_net},
      {"complete-net", "complete the net", 2, "fold a net", any, complete_net},
  };
}

}  // namespace fw::practice
