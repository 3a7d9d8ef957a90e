#pragma once

#include "paper/cutouts/flat_net.hpp"

namespace fw::paper {

/// Chooses the tabs: as many as can be, each deep enough to be glued, none that runs into a face or another tab, none
/// that would show or stick out when it is glued to its mate. A tab does not take the whole side: at each end it leaves
/// room for the other sides of its mate, and for its neighbor in the plane. Source of the depths and slopes: common
/// practice, no source.
void add_tabs(FlatNet& net);

}  // namespace fw::paper
