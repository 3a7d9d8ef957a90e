#include <gtest/gtest.h>

#include <map>
#include <set>

#include "practice/signatures.hpp"
#include "solids/catalog.hpp"
#include "tasks/catalog.hpp"

// Which mistakes can be made with a solid hangs on what its kind states, and on nothing else that tells kinds apart.
namespace fw::practice::mistakes_by_traits_test {
namespace {

using solids::Traits;

std::set<std::string> mistakes_with(const solids::Description& description, const std::string& find) {
  const lessons::Problem problem{"", "", description, {}, *solids::Solid::make(description), {}, {tasks::named(find)}};
  const Question question = *question_of(problem);
  std::set<std::string> ids;
  for (const WrongNumber& one : all_wrong_numbers(figure_of(problem, question))) {
    ids.insert(one.signature->id);
  }
  return ids;
}

struct Row {
  const char* find;
  std::vector<std::string> ids;
  bool Traits::*trait;
  bool is_certain = true;    ///< made with every such solid; else it hangs on its faces too: how many, of what shape
  bool is_of_flats = false;  ///< not made with a solid on a circle, for which other rows speak
};
const std::vector<Row>& rows() {
  static const std::vector<Row> table{
      {"surface_area", {"B2", "B4", "B5"}, &Traits::has_second_base},
      {"surface_area", {"A8"}, &Traits::bases_match},
      {"surface_area", {"B10", "B11"}, &Traits::has_apex, true, true},
      {"surface_area", {"O51", "O52", "O5", "O43"}, &Traits::has_round_base},
      {"volume", {"O1", "O5", "O43", "O53", "O54"}, &Traits::has_round_base},
      {"surface_area", {"B12", "C6"}, &Traits::has_apex, false},
      {"surface_area", {"A3"}, &Traits::is_all_alike},
      {"volume", {"A7"}, &Traits::bases_match},
      {"volume", {"E3"}, &Traits::has_base},
      {"volume", {"F1", "F2"}, &Traits::has_apex, true, true},
      {"volume", {"A3"}, &Traits::is_all_alike},
      {"edges", {"B17"}, &Traits::has_base, false},
  };
  return table;
}

TEST(Mistakes, GoByTheTraitsThatAKindStates) {
  std::map<std::size_t, std::set<bool>> stated;
  std::map<std::size_t, std::set<std::string>> made;
  for (const solids::Description& description : solids::shelf()) {
    const Traits& traits = solids::find_kind(description.kind)->traits;
    for (std::size_t i = 0; i < rows().size(); ++i) {
      const Row& row = rows()[i];
      const std::set<std::string> found = mistakes_with(description, row.find);
      // A frustum has two circles, and mistakes of its own.
      const bool is_of_one_circle = traits.has_apex || traits.bases_match;
      const bool is_stated = traits.*row.trait && !(row.is_of_flats && traits.has_round_base) &&
                             (row.trait != &Traits::has_round_base || is_of_one_circle);
      stated[i].insert(is_stated);
      for (const std::string& id : row.ids) {
        const bool is_found = found.count(id) != 0;
        EXPECT_TRUE(is_found == is_stated || (is_stated && !row.is_certain))
            << id << " of " << row.find << " with a " << solids::Solid::make(description)->name();
        if (is_found) {
          made[i].insert(id);
        }
      }
    }
  }
  for (std::size_t i = 0; i < rows().size(); ++i) {
    EXPECT_EQ(stated[i].size(), 2U) << "row " << i << " sees no solid without its trait, or none with it";
    EXPECT_EQ(made[i].size(), rows()[i].ids.size()) << "a mistake of row " << i << " is never made";
  }
}

}  // namespace
}  // namespace fw::practice::mistakes_by_traits_test
