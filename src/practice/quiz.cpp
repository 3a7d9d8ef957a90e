#include "practice/quiz.hpp"

#include <algorithm>
#include <numeric>

#include "base/ensure.hpp"
#include "solids/body/body_nets.hpp"

namespace fw::practice {
namespace {

using geometry::EdgeId;
using geometry::FaceId;
using solids::Body;
using words::message;

constexpr double pi = 3.14159265358979323846;
constexpr std::size_t option_count = 4;

/// A random spanning tree of the faces: edges in a random order, each kept that joins two pieces.
std::vector<EdgeId> random_hinges(const Body& body, Seed& seed) {
  std::vector<EdgeId> edges;
  for (std::size_t i = 0; i < body.edge_count(); ++i) {
    edges.push_back(EdgeId::at(i));
  }
  for (std::size_t i = edges.size(); i > 1; --i) {
    std::swap(edges[i - 1], edges[seed.below(i)]);
  }
  std::vector<std::size_t> piece(body.face_count());
  std::iota(piece.begin(), piece.end(), std::size_t{0});
  std::vector<EdgeId> hinges;
  for (const EdgeId id : edges) {
    const auto [left, right] = body.faces_at(id);
    const std::size_t a = piece[left.index()];
    const std::size_t b = piece[right.index()];
    if (a != b) {
      std::replace(piece.begin(), piece.end(), b, a);
      hinges.push_back(id);
    }
  }
  return hinges;
}

std::size_t pool_index(std::size_t pool_size, std::uint64_t seed, std::size_t number) {
  // A new shuffle of the pool for each round, so that every solid has its turn before one comes again.
  Seed stream{seed + number / pool_size};
  std::vector<std::size_t> order(pool_size);
  std::iota(order.begin(), order.end(), std::size_t{0});
  for (std::size_t i = pool_size; i > 1; --i) {
    std::swap(order[i - 1], order[stream.below(i)]);
  }
  return order[number % pool_size];
}

}  // namespace

std::vector<std::string> name_options(const solids::Solid& solid, Seed& seed) {
  std::vector<std::string> options;
  for (const std::string& name : solids::names_beside(solid)) {
    if (options.size() + 1 < option_count && solids::judge_name(solid, name) != solids::NameVerdict::Right) {
      options.push_back(name);
    }
  }
  const std::size_t place = seed.below(options.size() + 1);
  options.insert(options.begin() + static_cast<std::ptrdiff_t>(place), solid.name());
  return options;
}

nets::HingeTree random_net(const Body& body, FaceId root, Seed& seed) {
  constexpr int tries = 1000;
  for (int i = 0; i < tries; ++i) {
    const auto tree = solids::net_with(body, root, random_hinges(body, seed));
    ensure(tree.has_value(), "a spanning tree of the faces is a hinge tree");
    if (nets::overlapping(solids::unfolded(body, tree.value())).empty()) {
      return tree.value();
    }
  }
  broken_invariant("no net without overlap was found in 1000 draws", __FILE__, __LINE__);
}

NetQuestion net_question(const std::vector<solids::Solid>& pool, std::uint64_t seed, std::size_t number) {
  ensure(!pool.empty(), "a quiz needs a solid to ask for");
  std::size_t index = pool_index(pool.size(), seed, number);
  if (number > 0 && pool.size() > 1 && index == pool_index(pool.size(), seed, number - 1)) {
    index = (index + 1) % pool.size();
  }
  const solids::Solid& solid = pool[index];
  Seed stream{seed ^ (0xA24BAED4963EE407ULL * (number + 1))};
  const bool flipped = stream.below(2) == 1;
  Body body = flipped ? mirrored(solid.body()) : solid.body();
  const FaceId root = FaceId::at(stream.below(body.face_count()));
  nets::HingeTree net = solids::has_other_nets(body) ? random_net(body, root, stream) : solid.classic_net();
  const double turn_rad = 2.0 * pi * static_cast<double>(stream.below(24)) / 24.0;
  std::vector<std::string> options = name_options(solid, stream);
  const auto right = std::find(options.begin(), options.end(), solid.name());
  const auto right_option = static_cast<std::size_t>(right - options.begin());
  return {solid, std::move(body), std::move(net), turn_rad, flipped, std::move(options), right_option};
}

NameFeedback name_feedback(const solids::Solid& solid, std::string_view typed) {
  const solids::NameVerdict verdict = solids::judge_name(solid, typed);
  const std::string& family = solid.statement().family;
  switch (verdict) {
    case solids::NameVerdict::Right:
      return {verdict, message("Yes: {solid}.", {{"solid", words::Noun{solid.name()}}})};
    case solids::NameVerdict::AskBase:
      return {verdict,
              message("{family:A}, yes. Which one? Name the shape of its base.", {{"family", words::Noun{family}}})};
    case solids::NameVerdict::WrongFamily:
      if (solid.traits().has_round_base) {
        return {verdict, message("Run your finger around the side. Is it flat or curved? How many circles are there?")};
      }
      return {
          verdict,
          message("Look for a matching pair of bases. Two bases make a prism. One base and one point make a pyramid.")};
    case solids::NameVerdict::WrongBase:
      return {verdict, message("You have the right family. Look at the base again. How many sides does it have, and "
                               "are they all equal?")};
    case solids::NameVerdict::Unknown:
      break;
  }
  return {verdict, message("That isn't the name of a solid here. Which faces do you see, and how many of each?")};
}

}  // namespace fw::practice
