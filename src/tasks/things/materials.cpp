#include <algorithm>
#include <iterator>

#include "base/ensure.hpp"
#include "tasks/things/thing.hpp"

// What covers and fills things, as it is sold. Source: common practice, no source: a quart of paint covers about 100
// square feet and a liter about 10 square meters, soil comes in bags of 1 and 2 cubic feet and of 20, 40 and 50 liters,
// an 80-pound bag of concrete makes 0.6 cubic feet, plywood comes in sheets of 4 ft by 8 ft.
namespace fw::tasks {

// NOLINTNEXTLINE(readability-function-size): a table, one row after another
const std::vector<Material>& materials() {
  static const std::vector<Material> table{
      {"wrapping paper",
       Way::Wrap,
       {{"sheet", "560 in^2", 2, 4}, {"sheet", "3500 cm^2", 2, 4}, {"sheet", "280 in^2", 1, 2}}},
      {"tissue paper",
       Way::Wrap,
       {{"sheet", "400 in^2", 1, 2},
        {"sheet", "300 in^2", 1, 2},
        {"sheet", "2500 cm^2", 1, 2},
        {"sheet", "1500 cm^2", 1, 2}}},
      {"gold foil",
       Way::Wrap,
       {{"sheet", "100 in^2", 1, 3},
        {"sheet", "225 in^2", 2, 4},
        {"sheet", "600 cm^2", 1, 3},
        {"sheet", "150 cm^2", 1, 2}}},
      {"colored paper",
       Way::Wrap,
       {{"sheet", "108 in^2", 1, 2}, {"sheet", "216 in^2", 1, 3}, {"sheet", "600 cm^2", 1, 2}}},
      {"felt", Way::Wrap, {{"sheet", "108 in^2", 1, 2}, {"piece", "396 in^2", 3, 5}, {"sheet", "600 cm^2", 1, 2}}},
      {"fabric",
       Way::Wrap,
       {{"piece", "396 in^2", 3, 5},
        {"yard", "1620 in^2", 6, 12},
        {"piece", "2500 cm^2", 3, 5},
        {"meter", "11000 cm^2", 7, 12}}},
      {"contact paper",
       Way::Wrap,
       {{"roll", "1296 in^2", 6, 9},
        {"roll", "9 ft^2", 6, 9},
        {"roll", "9000 cm^2", 6, 9},
        {"sheet", "1000 cm^2", 1, 3}}},
      {"canvas",
       Way::Build,
       {{"yard", "15 ft^2", 9, 15}, {"yard", "2160 in^2", 9, 15}, {"meter", "15000 cm^2", 10, 16}}},
      {"clear plastic",
       Way::Build,
       {{"roll", "50 ft^2", 8, 14}, {"sheet", "1152 in^2", 9, 15}, {"roll", "40000 cm^2", 9, 15}}},
      {"paint",
       Way::Paint,
       {{"quart", "100 ft^2", 15, 22},
        {"jar", "16 ft^2", 5, 8},
        {"jar", "2304 in^2", 5, 8},
        {"can", "5 m^2", 9, 14},
        {"can", "50000 cm^2", 9, 14},
        {"jar", "15000 cm^2", 5, 8}}},
      {"craft paint",
       Way::Paint,
       {{"bottle", "300 in^2", 2, 3},
        {"bottle", "2000 cm^2", 2, 3},
        {"tube", "90 in^2", 1, 2},
        {"tube", "600 cm^2", 1, 2}}},
      {"frosting", Way::Paint, {{"tub", "120 in^2", 2, 4}, {"tub", "800 cm^2", 2, 4}}},
      {"cardboard",
       Way::Build,
       {{"sheet", "864 in^2", 2, 4},
        {"sheet", "432 in^2", 1, 3},
        {"sheet", "6000 cm^2", 2, 4},
        {"sheet", "1500 cm^2", 1, 2}}},
      {"poster board",
       Way::Build,
       {{"sheet", "616 in^2", 1, 2},
        {"sheet", "308 in^2", 1, 2},
        {"sheet", "3500 cm^2", 1, 3},
        {"sheet", "1400 cm^2", 1, 2}}},
      {"foam board", Way::Build, {{"sheet", "600 in^2", 3, 5}, {"sheet", "3500 cm^2", 3, 5}}},
      {"plywood",
       Way::Build,
       {{"sheet", "32 ft^2", 28, 40},
        {"half sheet", "16 ft^2", 16, 22},
        {"panel", "1152 in^2", 9, 14},
        {"panel", "7200 cm^2", 9, 14}}},
      {"balsa wood", Way::Build, {{"sheet", "144 in^2", 3, 5}, {"sheet", "900 cm^2", 3, 5}}},
      {"glass", Way::Build, {{"pane", "432 in^2", 9, 15}, {"pane", "2400 cm^2", 9, 15}}},
      {"acrylic",
       Way::Build,
       {{"sheet", "288 in^2", 9, 14}, {"sheet", "1800 cm^2", 9, 14}, {"sheet", "450 cm^2", 4, 7}}},
      {"metal roofing", Way::Wrap, {}},
  };
  return table;
}

// NOLINTNEXTLINE(readability-function-size): a table, one row after another
const std::vector<Filling>& fillings() {
  static const std::vector<Filling> table{
      {"potting soil",
       {{"bag", "1 ft^3", 5, 8},
        {"bag", "2 ft^3", 8, 13},
        {"bag", "20 L", 6, 9},
        {"bag", "40 L", 9, 14},
        {"bag", "500 in^3", 3, 5},
        {"bag", "5000 cm^3", 3, 5}},
       {{"flower pot", "60 in^3", 0, 0}, {"flower pot", "1000 cm^3", 0, 0}, {"flower pot", "0.5 ft^3", 0, 0}}},
      {"sand",
       {{"bag", "0.5 ft^3", 4, 7}, {"bag", "15 L", 4, 7}, {"bag", "60 in^3", 2, 4}, {"bag", "1000 cm^3", 2, 4}},
       {{"jar", "15 in^3", 0, 0}, {"jar", "250 cm^3", 0, 0}, {"bucket", "0.4 ft^3", 0, 0}}},
      {"popcorn",
       {{"bag", "250 in^3", 3, 5}, {"bag", "4000 cm^3", 3, 5}},
       {{"cup", "30 in^3", 0, 0}, {"cup", "500 cm^3", 0, 0}}},
      {"shredded paper",
       {{"bag", "1 ft^3", 6, 9},
        {"bag", "2 ft^3", 9, 14},
        {"bag", "50 L", 8, 12},
        {"bag", "800 in^3", 4, 6},
        {"bag", "10000 cm^3", 4, 6}},
       {{"carton", "200 in^3", 0, 0}, {"carton", "3000 cm^3", 0, 0}}},
      {"water",
       {{"jug", "1 gal", 1, 2},
        {"jug", "231 in^3", 1, 2},
        {"bucket", "10 L", 1, 2},
        {"bucket", "10000 cm^3", 1, 2},
        {"jug", "4 L", 1, 2}},
       {{"bottle", "60 in^3", 0, 0}, {"bottle", "750 cm^3", 0, 0}, {"pitcher", "2000 cm^3", 0, 0}}},
      {"candy",
       {{"bag", "60 in^3", 3, 6}, {"bag", "90 in^3", 5, 8}, {"bag", "1000 cm^3", 3, 6}, {"bag", "1 L", 3, 6}},
       {{"treat bag", "12 in^3", 0, 0}, {"treat bag", "200 cm^3", 0, 0}}},
      {"confetti",
       {{"bag", "25 in^3", 2, 4}, {"bag", "400 cm^3", 2, 4}},
       {{"cup", "8 in^3", 0, 0}, {"cup", "125 cm^3", 0, 0}}},
      {"cereal",
       {{"bag", "110 in^3", 3, 5}, {"bag", "1800 cm^3", 3, 5}},
       {{"bowl", "25 in^3", 0, 0}, {"bowl", "400 cm^3", 0, 0}}},
      {"lemonade",
       {{"jug", "1 gal", 3, 5}, {"jug", "231 in^3", 3, 5}, {"jug", "4000 cm^3", 3, 5}, {"bottle", "2 L", 2, 4}},
       {{"cup", "20 in^3", 0, 0}, {"cup", "300 cm^3", 0, 0}}},
      {"bird seed",
       {{"bag", "200 in^3", 3, 6}, {"bag", "3000 cm^3", 3, 6}},
       {{"feeder", "40 in^3", 0, 0}, {"feeder", "600 cm^3", 0, 0}}},
      {"corn",
       {{"sack", "1 ft^3", 8, 12}, {"sack", "30 L", 8, 12}, {"sack", "1000 in^3", 5, 8}, {"sack", "15000 cm^3", 5, 8}},
       {{"bucket", "400 in^3", 0, 0}, {"bucket", "6000 cm^3", 0, 0}}},
      {"foam filling",
       {{"bag", "2 ft^3", 10, 15}, {"bag", "50 L", 10, 15}, {"bag", "1000 in^3", 5, 8}, {"bag", "15000 cm^3", 5, 8}},
       {{"pillow", "300 in^3", 0, 0}, {"pillow", "5000 cm^3", 0, 0}}},
      {"snow",
       {{"bucket", "0.5 ft^3", 0, 0}, {"bucket", "600 in^3", 0, 0}, {"bucket", "10 L", 0, 0}},
       {{"bucket", "0.5 ft^3", 0, 0}, {"bucket", "600 in^3", 0, 0}, {"bucket", "10000 cm^3", 0, 0}}},
      {"wax",
       {{"bag", "30 in^3", 4, 7}, {"bag", "500 cm^3", 4, 7}, {"block", "200 cm^3", 2, 4}},
       {{"mold", "6 in^3", 0, 0}, {"mold", "90 cm^3", 0, 0}, {"mold", "40 cm^3", 0, 0}}},
      {"clay",
       {{"block", "60 in^3", 4, 7}, {"block", "1000 cm^3", 4, 7}, {"block", "500 cm^3", 3, 5}},
       {{"tub", "15 in^3", 0, 0}, {"tub", "250 cm^3", 0, 0}}},
      {"plaster", {{"box", "70 in^3", 4, 7}, {"box", "1000 cm^3", 4, 7}}, {}},
      {"concrete",
       {{"bag", "0.6 ft^3", 5, 8}, {"bag", "1000 in^3", 5, 8}, {"bag", "12 L", 5, 8}, {"bag", "12000 cm^3", 5, 8}},
       {}},
      {"chocolate",
       {{"bag", "24 in^3", 4, 7}, {"bag", "300 cm^3", 4, 7}},
       {{"mold", "2 in^3", 0, 0}, {"mold", "25 cm^3", 0, 0}, {"mold", "10 cm^3", 0, 0}}},
      {"soap",
       {{"block", "40 in^3", 5, 9}, {"block", "700 cm^3", 5, 9}},
       {{"mold", "5 in^3", 0, 0}, {"mold", "90 cm^3", 0, 0}}},
      {"cheese", {}, {}},
      {"wood", {}, {}},
      {"rubber", {}, {}},
      {"cake", {}, {}},
      {"ice", {}, {}},
      {"foam", {}, {}},
      {"gelatin",
       {{"box", "30 in^3", 1, 2}, {"box", "500 cm^3", 1, 2}},
       {{"cup", "7 in^3", 0, 0}, {"cup", "120 cm^3", 0, 0}}},
      {"cocoa", {}, {}},
      {"hot chocolate", {}, {}},
      {"soup", {}, {}},
      {"trail mix", {}, {}},
      {"hay", {}, {}},
  };
  return table;
}

const std::vector<PackedItem>& packed_items() {
  static const std::vector<PackedItem> table{
      {"toy block", "in", {2, 2, 2}},      {"toy block", "cm", {4, 4, 4}},        {"cube candle", "in", {3, 3, 3}},
      {"cube candle", "cm", {7, 7, 7}},    {"puzzle cube", "cm", {6, 6, 6}},      {"ornament box", "in", {4, 4, 4}},
      {"ornament box", "cm", {8, 8, 8}},   {"bar of soap", "in", {4, 3, 1}},      {"bar of soap", "cm", {9, 6, 3}},
      {"juice box", "in", {2, 1, 4}},      {"juice box", "cm", {6, 4, 10}},       {"deck of cards", "cm", {9, 6, 2}},
      {"box of tea", "in", {5, 3, 3}},     {"box of tea", "cm", {13, 8, 7}},      {"box of candles", "in", {6, 4, 2}},
      {"foam block", "in", {6, 6, 6}},     {"foam block", "cm", {15, 15, 15}},    {"snack box", "in", {4, 4, 4}},
      {"snack box", "cm", {9, 9, 9}},      {"box of screws", "in", {3, 3, 3}},    {"box of screws", "cm", {7, 7, 7}},
      {"box of nails", "in", {4, 3, 2}},   {"box of nails", "cm", {10, 7, 5}},    {"board game", "in", {11, 8, 2}},
      {"board game", "cm", {27, 20, 5}},   {"paperback book", "cm", {18, 11, 2}}, {"box of crayons", "cm", {12, 9, 3}},
      {"paperback book", "in", {7, 4, 1}}, {"box of raisins", "cm", {5, 4, 8}},
  };
  return table;
}

const std::vector<Thing>& things() {
  static const std::vector<Thing> table = [] {
    std::vector<Thing> all = box_things();
    for (const std::vector<Thing>& more : {upright_things(), pointed_things(), round_things()}) {
      all.insert(all.end(), more.begin(), more.end());
    }
    return all;
  }();
  return table;
}

namespace {

template <class Row>
const Row& row_named(const std::vector<Row>& rows, const std::string& name) {
  const auto found = std::find_if(rows.begin(), rows.end(), [&](const Row& row) { return row.name == name; });
  ensure(found != rows.end(), "a thing is covered or filled with something that is not in the table");
  return *found;
}

}  // namespace

const Material& material_named(const std::string& name) { return row_named(materials(), name); }
const Filling& filling_named(const std::string& name) { return row_named(fillings(), name); }

}  // namespace fw::tasks
