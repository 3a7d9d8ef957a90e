#pragma once

#include <optional>
#include <string>
#include <vector>

#include "nets/hinge_tree.hpp"
#include "practice/seed.hpp"
#include "solids/naming.hpp"
#include "solids/solid.hpp"
#include "words/message.hpp"

namespace fw::practice {

/// "Which solid folds from this net?" - the net drawn turned by `turn_rad`, and seen from its other side
/// where `flipped`.
struct NetQuestion {
  solids::Solid solid;
  solids::Body body;    ///< the solid's, or its mirror image where flipped
  nets::HingeTree net;  ///< of `body`; its layout does not overlap itself
  double turn_rad = 0;
  bool flipped = false;
  std::vector<std::string> options;  ///< names of solids with as many faces; the right one among them
  std::size_t right_option = 0;
};

/// The question number `number` of a seed: a solid of the pool, never the one of the question before where
/// the pool has another, with any distinct net of it. Requires: the pool is not empty.
[[nodiscard]] NetQuestion net_question(const std::vector<solids::Solid>& pool, std::uint64_t seed, std::size_t number);

/// A net of the body drawn at random over all hinge trees, redrawn until it does not overlap itself.
[[nodiscard]] nets::HingeTree random_net(const solids::Body& body, geometry::FaceId root, Seed& seed);

/// The solid's name among names of other solids with as many faces, four at most, the right one at a place by chance.
[[nodiscard]] std::vector<std::string> name_options(const solids::Solid& solid, Seed& seed);

/// What a typed name deserves: its verdict and what to say, in one or two short sentences with one thing to do.
struct NameFeedback {
  solids::NameVerdict verdict = solids::NameVerdict::Unknown;
  words::Message message;
  friend bool operator==(const NameFeedback&, const NameFeedback&) = default;
};
[[nodiscard]] NameFeedback name_feedback(const solids::Solid& solid, std::string_view typed);

}  // namespace fw::practice
