#pragma once

#include <string>

#include "nets/fold_test.hpp"
#include "solids/solid.hpp"
#include "words/message.hpp"

namespace fw::practice {

/// The code of a finding in the catalog of mistakes, and what to say of it.
struct NetReason {
  std::string cause;
  words::Message message;
};
[[nodiscard]] NetReason net_reason(const solids::Solid& solid, const nets::Cutout& cutout,
                                   const nets::Finding& finding);

}  // namespace fw::practice
