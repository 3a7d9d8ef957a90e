#pragma once

namespace fw {

/// Lambdas as one visitor: std::visit(Overload{[](A) {...}, [](B) {...}}, variant).
template <class... F>
struct Overload : F... {
  using F::operator()...;
};
template <class... F>
Overload(F...) -> Overload<F...>;

}  // namespace fw
