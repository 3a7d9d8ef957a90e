#include "lessons/read_lesson.hpp"

#include <gmock/gmock.h>

#include "lesson_texts.hpp"
#include "tasks/word_problems/word_problem.hpp"

namespace fw::lessons::read_lesson_test {
namespace {

const Supply* supply_of(const Problem& problem) {
  const auto* task = practice::task_as<tasks::WordProblem>(problem);
  return task == nullptr ? nullptr : &task->supply();
}

using testing::ElementsAre;
using testing::IsEmpty;

struct Fault {
  const char* name;
  std::string lesson;
  std::string message;
};

void PrintTo(const Fault& fault, std::ostream* out) { *out << fault.name; }

class Malformed : public testing::TestWithParam<Fault> {};

TEST_P(Malformed, IsToldExactly) { EXPECT_THAT(errors_of(GetParam().lesson), ElementsAre(GetParam().message)); }

std::string name_of(const testing::TestParamInfo<Fault>& info) { return info.param.name; }

// A prism 7 cm high on this base; the base starts at column 89.
std::string prism_on(const std::string& base) {
  return lesson_with_solid(R"({"kind": "prism", "base": )" + base + R"(, "height": "7 cm"})");
}

const std::string problem = R"([{"id": "p", "solid": {"kind": "cube", "edge": "7 cm"}}])";

INSTANTIATE_TEST_SUITE_P(
    Whole, Malformed,
    testing::Values(
        Fault{"NoObject", "[1]", "a.json:1:1: a lesson is an object in { }; found a list"},
        Fault{"NoVersion", R"({"title": "T", "problems": )" + problem + "}",
              "a.json:1:1: the key \"lesson\" is missing: a lesson file starts with {\"lesson\": 1"},
        Fault{"VersionText", R"({"lesson": "1", "title": "T", "problems": )" + problem + "}",
              "a.json:1:12: \"lesson\" is the version of the format, the number 1; found the text \"1\""},
        Fault{"VersionFraction", R"({"lesson": 1.0, "title": "T", "problems": )" + problem + "}",
              "a.json:1:12: \"lesson\" is the version of the format, the number 1; found the number 1.0"},
        Fault{"VersionZero", R"({"lesson": 0, "title": "T", "problems": )" + problem + "}",
              "a.json:1:12: \"lesson\" is the version of the format, the number 1; found the number 0"},
        Fault{"NewerVersion", R"({"lesson": 2, "shape": 3})",
              "a.json:1:12: this lesson has version 2 of the format, and this program reads version 1: get "
              "a newer program"},
        Fault{"NoTitle", R"({"lesson": 1, "problems": )" + problem + "}",
              "a.json:1:1: the key \"title\" is missing, such as \"title\": \"Lantern fair\""},
        Fault{"EmptyTitle", R"({"lesson": 1, "title": "", "problems": )" + problem + "}",
              "a.json:1:24: a title has at least one letter; found an empty text"},
        Fault{"TitleNumber", R"({"lesson": 1, "title": 7, "problems": )" + problem + "}",
              "a.json:1:24: a title is text in quotation marks; found the number 7"},
        Fault{"NoProblems", R"({"lesson": 1, "title": "T"})",
              "a.json:1:1: the key \"problems\" is missing: a list of problems in [ ]"},
        Fault{"EmptyProblems", R"({"lesson": 1, "title": "T", "problems": []})",
              "a.json:1:41: a lesson has at least one problem; this list is empty"},
        Fault{"ProblemsObject", R"({"lesson": 1, "title": "T", "problems": {}})",
              "a.json:1:41: \"problems\" is a list of problems in [ ]; found an object in { }"},
        Fault{"ProblemText", R"({"lesson": 1, "title": "T", "problems": ["cube"]})",
              "a.json:1:42: problem 1: a problem is an object in { }; found the text \"cube\""},
        Fault{"MisspeltKey", R"({"lesson": 1, "titel": "T", "title": "T", "problems": )" + problem + "}",
              "a.json:1:15: \"titel\" is not a key of a lesson; did you mean \"title\"?"},
        Fault{"StrangeKey", R"({"lesson": 1, "author": "T", "title": "T", "problems": )" + problem + "}",
              "a.json:1:15: \"author\" is not a key of a lesson; what can go here is \"lesson\", \"title\", "
              "\"notation\" or \"problems\""},
        Fault{"SecondLine", "{\"lesson\": 1,\n \"title\": \"² ft\", \"problem\": [], \"problems\": " + problem + "}",
              "a.json:2:19: \"problem\" is not a key of a lesson; did you mean \"problems\"?"}),
    name_of);

INSTANTIATE_TEST_SUITE_P(
    OfProblems, Malformed,
    testing::Values(
        Fault{"NoId", R"({"lesson": 1, "title": "T", "problems": [{"solid": {"kind": "cube", "edge": "7 cm"}}]})",
              "a.json:1:42: problem 1: the key \"id\" is missing: a short name of the problem, such as \"crate\""},
        Fault{"EmptyId",
              R"({"lesson": 1, "title": "T", "problems": [{"id": "", "solid": {"kind": "cube", "edge": "7 cm"}}]})",
              "a.json:1:49: problem 1: \"\" is not an id: write 1 to 64 letters a-z and A-Z, digits, - or _"},
        Fault{
            "IdWithSpace",
            R"({"lesson": 1, "title": "T", "problems": [{"id": "my box", "solid": {"kind": "cube", "edge": "7 cm"}}]})",
            "a.json:1:49: problem 1: \"my box\" is not an id: write 1 to 64 letters a-z and A-Z, digits, - or _"},
        Fault{"IdNumber",
              R"({"lesson": 1, "title": "T", "problems": [{"id": 7, "solid": {"kind": "cube", "edge": "7 cm"}}]})",
              "a.json:1:49: problem 1: an id is text in quotation marks; found the number 7"},
        Fault{"TakenId",
              R"({"lesson": 1, "title": "T", "problems": [{"id": "p", "solid": {"kind": "cube", "edge": "7 cm"}}, )"
              R"({"id": "p", "solid": {"kind": "cube", "edge": "8 cm"}}]})",
              "a.json:1:105: problem p: an earlier problem already has the id \"p\": give each problem its own"},
        Fault{"NotationText", R"({"lesson": 1, "title": "T", "notation": "cross", "problems": )" + problem + "}",
              "a.json:1:41: \"notation\" is a list of words, such as [\"division\", \"cross\"]; found the text "
              "\"cross\""},
        Fault{"NotationWord", R"({"lesson": 1, "title": "T", "notation": ["divison"], "problems": )" + problem + "}",
              "a.json:1:42: \"divison\" can't go into \"notation\"; did you mean \"division\"?"},
        Fault{"NoSolid", R"({"lesson": 1, "title": "T", "problems": [{"id": "p"}]})",
              "a.json:1:42: problem p: the key \"solid\" is missing: it says which solid the problem is about"},
        Fault{"MisspeltKey", lesson_with(R"(, "promt": "How much?")"),
              "a.json:1:147: problem p: \"promt\" is not a key of a problem; did you mean \"prompt\"?"},
        Fault{"Note", lesson_with(R"(, "note": "x")"),
              "a.json:1:147: problem p: \"note\" is not a key of a problem; what can go here is \"id\", \"prompt\", "
              "\"solid\", \"open\", \"known\", \"find\", \"round_to\", \"supply\", \"net\", \"scale\", \"copy\", "
              "\"unit\", "
              "\"claim\", \"face\", \"wrong\", \"between\" or \"compare\""},
        Fault{"PromptList", lesson_with(R"(, "prompt": ["How much?"])"),
              "a.json:1:157: problem p: a prompt is text in quotation marks; found a list"},
        Fault{"EmptyFind", lesson_with(R"(, "find": [])"),
              "a.json:1:155: problem p: \"find\" is a list of what to find, such as [\"surface_area\"]; found an empty "
              "list"},
        Fault{"FindText", lesson_with(R"(, "find": "volume")"),
              "a.json:1:155: problem p: \"find\" is a list of what to find, such as [\"surface_area\"]; found the text "
              "\"volume\""},
        Fault{"FindTwice", lesson_with(R"(, "find": ["volume", "volume"])"),
              "a.json:1:166: problem p: \"volume\" is asked twice: keep one of them"},
        Fault{"FindMisspelt", lesson_with(R"(, "find": ["surface area"])"),
              "a.json:1:156: problem p: \"surface area\" can't be asked about a rectangular prism; did you mean "
              "\"surface_area\"?"},
        Fault{"KnownKey", lesson_with(R"(, "known": {"volum": "315 cm^3"})"),
              "a.json:1:157: problem p: \"volum\" is not a key of \"known\"; did you mean \"volume\"?"},
        Fault{"KnownLength", lesson_with(R"(, "known": {"volume": "315 cm"})"),
              "a.json:1:167: problem p, volume: \"315 cm\" is a length; it should be a volume, such as \"180 cm^3\""},
        Fault{
            "KnownUnknown", lesson_with(R"(, "known": {"volume": "?"})"),
            "a.json:1:167: problem p, volume: \"?\" can't go here: write a number and its unit, such as \"180 cm^3\""}),
    name_of);

INSTANTIATE_TEST_SUITE_P(
    OfSolids, Malformed,
    testing::Values(
        Fault{"SolidText", lesson_with_solid("\"cube\""),
              "a.json:1:63: problem p: an object such as {\"kind\": \"cube\", \"edge\": \"7 cm\"} belongs here; found "
              "the text \"cube\""},
        Fault{"NoKind", lesson_with_solid(R"({"edge": "7 cm"})"),
              "a.json:1:63: problem p: the key \"kind\" is missing here; what can go here is \"cube\", \"rectangular "
              "prism\", \"prism\", \"pyramid\", \"regular polyhedron\", \"cylinder\", \"cone\" or \"cone frustum\""},
        Fault{"MisspeltKind", lesson_with_solid(R"({"kind": "piramid"})"),
              "a.json:1:72: problem p, kind: \"piramid\" is not a known kind; did you mean \"pyramid\"?"},
        Fault{"MisspeltField", lesson_with_solid(R"({"kind": "cube", "edge": "7 cm", "egde": "7 cm"})"),
              "a.json:1:96: problem p: \"egde\" is not a key of a cube; did you mean \"edge\"?"},
        Fault{"BareNumber", lesson_with_solid(R"({"kind": "cube", "edge": 7})"),
              "a.json:1:88: problem p, edge: a measure is text with its unit; found the number 7, write \"7 cm\""},
        Fault{"MeasureNull", lesson_with_solid(R"({"kind": "cube", "edge": null})"),
              "a.json:1:88: problem p, edge: a measure is text such as \"9 cm\"; found null"},
        Fault{"NoNumber", lesson_with_solid(R"({"kind": "cube", "edge": "seven cm"})"),
              "a.json:1:88: problem p, edge: \"seven cm\" is not a measure: There is no number before “seven cm”. "
              "Write a number and a unit, such as 7 1/2 ft."},
        Fault{
            "UnknownUnit", lesson_with_solid(R"({"kind": "cube", "edge": "7 cmm"})"),
            "a.json:1:88: problem p, edge: \"7 cmm\" is not a measure: “cmm” is not a known unit. Did you mean “cm”?"},
        Fault{"Area", lesson_with_solid(R"({"kind": "cube", "edge": "7 cm^2"})"),
              "a.json:1:88: problem p, edge: \"7 cm^2\" is an area; it should be a length, such as \"9 cm\""},
        Fault{"Zero", lesson_with_solid(R"({"kind": "cube", "edge": "0 cm"})"),
              "a.json:1:88: problem p, edge: a measure is more than 0; found \"0 cm\""},
        Fault{"Negative", lesson_with_solid(R"({"kind": "cube", "edge": "-7 cm"})"),
              "a.json:1:88: problem p, edge: a measure is more than 0; found \"-7 cm\""},
        Fault{"TooLong", lesson_with_solid(R"({"kind": "cube", "edge": "1001 km"})"),
              "a.json:1:88: problem p, edge: \"1001 km\" is out of range: lengths run from 0.001 mm to 1000 km"},
        Fault{"TooShort", lesson_with_solid(R"({"kind": "cube", "edge": "0.0009 mm"})"),
              "a.json:1:88: problem p, edge: \"0.0009 mm\" is out of range: lengths run from 0.001 mm to 1000 km"},
        Fault{"NoBase", lesson_with_solid(R"({"kind": "prism", "height": "7 cm"})"),
              "a.json:1:63: problem p: the key \"base\" is missing: a prism stands on a base, such as {\"shape\": "
              "\"square\", \"side\": \"6 cm\"}"},
        Fault{"BaseText", lesson_with_solid(R"({"kind": "prism", "base": "square", "height": "7 cm"})"),
              "a.json:1:89: problem p, base: an object such as {\"shape\": \"square\", \"side\": \"6 cm\"} belongs "
              "here; found the text \"square\""},
        Fault{"MisspeltShape", prism_on(R"({"shape": "sqare"})"),
              "a.json:1:99: problem p, base.shape: \"sqare\" is not a known shape; did you mean \"square\"?"},
        Fault{"FieldOfAnotherShape", prism_on(R"({"shape": "square", "side": "6 cm", "leg": "6 cm"})"),
              "a.json:1:125: problem p, base: \"leg\" is not a key of a square; what can go here is \"shape\" or "
              "\"side\""},
        Fault{"BaseMeasure", prism_on(R"({"shape": "square", "side": 6})"),
              "a.json:1:117: problem p, base.side: a measure is text with its unit; found the number 6, write \"6 "
              "cm\""},
        Fault{"CountText", prism_on(R"({"shape": "regular polygon", "count": "6", "side": "6 cm"})"),
              "a.json:1:127: problem p, base.count: a whole number without quotation marks belongs here, 3 to 40; "
              "found the text \"6\""},
        Fault{"CountTooLarge", prism_on(R"({"shape": "regular polygon", "count": 41, "side": "6 cm"})"),
              "a.json:1:127: problem p, base.count: the number 41 is out of range: it should be 3 to 40"},
        Fault{"LengthsNoList", prism_on(R"({"shape": "right triangle", "legs": "3 cm"})"),
              "a.json:1:125: problem p, base.legs: a list such as [\"9 cm\", \"11 cm\"] belongs here; found the text "
              "\"3 cm\""},
        Fault{"LengthsTooMany", prism_on(R"({"shape": "right triangle", "legs": ["3 cm", "4 cm", "5 cm"]})"),
              "a.json:1:125: problem p, base.legs: this list has 3 items; it should have 2"},
        Fault{"PointsBad", prism_on(R"({"shape": "polygon", "vertices": [[0, 0], [8], [4, 3]], "unit": "cm"})"),
              "a.json:1:131: problem p, base.vertices: a point is a list of two numbers, such as [4, 3]; found a list"},
        Fault{"CoordinateBad",
              prism_on(R"({"shape": "polygon", "vertices": [[0, 0], [8, true], [4, 3]], "unit": "cm"})"),
              "a.json:1:135: problem p, base.vertices: a coordinate is a number, such as 4 or 2.5; found true"},
        Fault{
            "WordBad",
            lesson_with_solid(
                R"({"kind": "prism", "base": {"shape": "square", "side": "6 cm"}, "height": "7 cm", "lies": "sides"})"),
            "a.json:1:152: problem p, lies: \"sides\" can't go here; did you mean \"side\"?"}),
    name_of);

INSTANTIATE_TEST_SUITE_P(
    OfSupplies, Malformed,
    testing::Values(
        Fault{"NoPurpose", lesson_with(R"(, "supply": {"each": "40 cm^2", "item": "roll"})"),
              "a.json:1:157: problem p: a supply says what it is for: \"cover\", \"fill\", \"edge\" or \"pack\", as in "
              "{\"cover\": "
              "\"surface_area\", \"each\": \"40 ft^2\", \"item\": \"roll\"}"},
        Fault{"TwoPurposes",
              lesson_with(
                  R"(, "supply": {"cover": "surface_area", "fill": "volume", "each": "40 cm^2", "item": "roll"})"),
              "a.json:1:191: problem p: a supply has one of \"cover\", \"fill\", \"edge\" and \"pack\"; found a second "
              "one"},
        Fault{"WrongDimension",
              lesson_with(R"(, "supply": {"cover": "surface_area", "each": "40 cm^3", "item": "roll"})"),
              "a.json:1:191: problem p, each: \"40 cm^3\" is a volume; it should be an area, such as \"36 cm^2\""},
        Fault{"WrongMeasure", lesson_with(R"(, "supply": {"cover": "volume", "each": "40 cm^2", "item": "roll"})"),
              "a.json:1:167: problem p, cover: a rectangular prism has no \"volume\" to cover; what can go here "
              "is \"surface_area\", \"lateral_area\" or \"base_area\""},
        Fault{"NoItem", lesson_with(R"(, "supply": {"fill": "volume", "each": "2 L"})"),
              "a.json:1:157: problem p: a supply that says how much each item is for also says what the item is: "
              "\"item\": \"roll\""},
        Fault{"OtherUnits", lesson_with(R"(, "supply": {"fill": "volume", "each": "2", "item": "cup"})"),
              "a.json:1:184: problem p, each: \"2\" can't be compared with a solid measured in cm"},
        Fault{"MisspeltKey", lesson_with(R"(, "supply": {"fill": "volume", "eech": "2 L", "item": "cup"})"),
              "a.json:1:176: problem p: \"eech\" is not a key of \"supply\"; did you mean \"each\"?"},
        Fault{"SupplyText", lesson_with(R"(, "supply": "roll")"),
              "a.json:1:157: problem p: \"supply\" is an object such as {\"cover\": \"surface_area\", \"each\": \"40 "
              "ft^2\", \"item\": \"roll\"}; found the text \"roll\""}),
    name_of);

// What the supply of rolls that cover says beside; "supply" starts at column 157, the first of these keys at 218.
std::string rolls_with(const std::string& members) {
  return lesson_with(R"(, "supply": {"cover": "surface_area", "each": "40 cm^2", "item": "roll")" + members + "}");
}

const std::string no_price =
    " is not a price: write an amount above 0, whole or with two decimals, with $, £ or € before it or no sign, such "
    "as "
    "\"4.50\", \"$4.50\" or \"3\"";

INSTANTIATE_TEST_SUITE_P(
    OfCounts, Malformed,
    testing::Values(
        Fault{"RoundMisspelt", rolls_with(R"(, "round": "dwon")"),
              "a.json:1:227: problem p, round: \"dwon\" can't go here; did you mean \"down\"?"},
        Fault{"RoundOther", rolls_with(R"(, "round": "nearest")"),
              "a.json:1:227: problem p, round: \"nearest\" can't go here; what can go here is \"up\", \"down\" or "
              "\"none\""},
        Fault{"RoundTruth", rolls_with(R"(, "round": true)"),
              "a.json:1:227: problem p, round: how a count is rounded is text in quotation marks; found true"},
        Fault{"PriceNumber", rolls_with(R"(, "price": 4.5)"),
              "a.json:1:227: problem p, price: a price is text in quotation marks, such as \"4.50\"; found the number "
              "4.5"},
        Fault{"PriceOneDecimal", rolls_with(R"(, "price": "4.5")"),
              "a.json:1:227: problem p, price: \"4.5\"" + no_price},
        Fault{"PriceZero", rolls_with(R"(, "price": "$0.00")"), "a.json:1:227: problem p, price: \"$0.00\"" + no_price},
        Fault{"PriceTooLong", rolls_with(R"(, "price": "1234567")"),
              "a.json:1:227: problem p, price: \"1234567\"" + no_price},
        Fault{"PriceSignAlone", rolls_with(R"(, "price": "€")"), "a.json:1:227: problem p, price: \"€\"" + no_price},
        Fault{"PriceSignBehind", rolls_with(R"(, "price": "4.50 €")"),
              "a.json:1:227: problem p, price: \"4.50 €\"" + no_price},
        Fault{"CoatsNone", rolls_with(R"(, "coats": 0)"),
              "a.json:1:227: problem p, coats: \"coats\" is a whole number from 1 to 20; found the number 0"},
        Fault{"CoatsHalf", rolls_with(R"(, "coats": 1.5)"),
              "a.json:1:227: problem p, coats: \"coats\" is a whole number from 1 to 20; found the number 1.5"},
        Fault{"CoatsMany", rolls_with(R"(, "coats": 21)"),
              "a.json:1:227: problem p, coats: \"coats\" is a whole number from 1 to 20; found the number 21"},
        Fault{"CoatsText", rolls_with(R"(, "coats": "2")"),
              "a.json:1:227: problem p, coats: \"coats\" is a whole number from 1 to 20; found the text \"2\""},
        Fault{"CoatsOfFilling", lesson_with(R"(, "supply": {"fill": "volume", "coats": 2})"),
              "a.json:1:185: problem p, coats: coats are laid where something is covered; \"fill\" has none"},
        Fault{"PriceOfNothing", lesson_with(R"(, "supply": {"fill": "volume", "price": "3"})"),
              "a.json:1:185: problem p, price: \"price\" is about items, so the supply also says how much each one is "
              "for: \"each\": \"40 ft^2\", \"item\": \"roll\""},
        Fault{"RoundOfNothing", lesson_with(R"(, "supply": {"fill": "volume", "round": "none"})"),
              "a.json:1:185: problem p, round: \"round\" is about items, so the supply also says how much each one is "
              "for: \"each\": \"40 ft^2\", \"item\": \"roll\""},
        Fault{"KeyMisspelt", rolls_with(R"(, "prise": "3")"),
              "a.json:1:218: problem p: \"prise\" is not a key of \"supply\"; did you mean \"price\"?"}),
    name_of);

INSTANTIATE_TEST_SUITE_P(
    OfOpenFaces, Malformed,
    testing::Values(
        Fault{"Text", lesson_with(R"(, "open": "top")"),
              "a.json:1:155: problem p, open: \"open\" is a list of the faces that do not count, such as [\"top\"] or "
              "[2]; found the text \"top\""},
        Fault{"Empty", lesson_with(R"(, "open": [])"),
              "a.json:1:155: problem p, open: \"open\" is a list of the faces that do not count, such as [\"top\"] or "
              "[2]; found an empty list"},
        Fault{"Misspelt", lesson_with(R"(, "open": ["topp"])"),
              "a.json:1:156: problem p, open: \"topp\" is not a face of a rectangular prism, whose faces also have "
              "numbers, 1 to 6; did you mean \"top\"?"},
        Fault{"TwoBases", lesson_with(R"(, "open": ["base"])"),
              "a.json:1:156: problem p, open: \"base\" is not a face of a rectangular prism, whose faces also have "
              "numbers, 1 to 6; did you mean \"bases\"?"},
        Fault{
            "NoSuchNumber", lesson_with(R"(, "open": [7])"),
            "a.json:1:156: problem p, open: there is no face 7: the faces of a rectangular prism are numbered 1 to 6"},
        Fault{"Truth", lesson_with(R"(, "open": [true])"),
              "a.json:1:156: problem p, open: an open face is a word such as \"top\" or the number of a face; found "
              "true"},
        Fault{"Twice", lesson_with(R"(, "open": ["bases", 2])"),
              "a.json:1:165: problem p, open: face 2 is open twice: name it once"},
        Fault{"All", lesson_with(R"(, "open": [1, 2, 3, 4, 5, 6])"),
              "a.json:1:155: problem p, open: every face is open, so nothing is left to cover: at least one face "
              "counts"},
        Fault{"KnownSurface", lesson_with(R"(, "open": ["top"], "known": {"surface_area": "286 cm^2"})"),
              "a.json:1:190: problem p, surface_area: a known surface area is that of the closed solid, and this "
              "problem has open faces: give another measure"},
        Fault{"CutLateral", lesson_with(R"(, "open": ["front"], "find": ["lateral_area"])"),
              "a.json:1:155: problem p, open: \"lateral_area\" counts all faces of its kind, and one of them is open: "
              "ask for \"surface_area\", which leaves open faces out"}),
    name_of);

TEST(ReadLesson, ReadsWhatACountNeeds) {
  const auto lesson = read_lesson(lesson_with(R"(, "open": ["top", 3], "find": ["surface_area"],
        "supply": {"cover": "surface_area", "each": "40 cm^2", "item": "roll", "round": "none", "price": "£4.50",
        "coats": 3})"));
  ASSERT_TRUE(lesson.has_value()) << told(lesson.error()).front();
  const Problem& read = lesson->problems.front();
  ASSERT_EQ(read.open.size(), 2U);
  EXPECT_EQ(read.open[0].name, "top");
  EXPECT_EQ(read.open[1].name, "3");
  EXPECT_EQ(supply_of(read)->rounding, Rounding::None);
  ASSERT_TRUE(supply_of(read)->price.has_value());
  EXPECT_EQ(supply_of(read)->price->sign, "£");
  EXPECT_EQ(supply_of(read)->price->amount, exact::Number::ratio(9, 2));
  EXPECT_EQ(supply_of(read)->coats, 3);
  // The solid itself stays closed: 2 × (63 + 45 + 35), by hand.
  EXPECT_EQ(read.solid.surface_area().amount(), exact::Number::whole(286));
}

TEST(ReadLesson, TakesASupplyWithoutTheRestAsOneOfWholePacks) {
  const auto lesson =
      read_lesson(lesson_with(R"(, "supply": {"cover": "surface_area", "each": "40 cm^2", "item": "roll"})"));
  ASSERT_TRUE(lesson.has_value());
  const Supply& supply = *supply_of(lesson->problems.front());
  EXPECT_EQ(supply.rounding, Rounding::Up);
  EXPECT_FALSE(supply.price.has_value());
  EXPECT_EQ(supply.coats, 1);
  EXPECT_TRUE(lesson->problems.front().open.empty());
}

TEST(ReadLesson, TellsAllErrorsInOnePassInTheOrderOfTheText) {
  const std::string lesson = R"({"lesson": 1, "titel": "T",
 "problems": [
  {"id": "a", "solid": {"kind": "cube", "edge": 7}, "find": "volume"},
  {"id": "b", "solid": {"kind": "cube", "edge": "7 cm"}},
  {"id": "a", "solid": {"kind": "pyramid", "base": {"shape": "square", "side": "6 cm^2"}, "hight": "4 cm"}}]})";
  EXPECT_THAT(
      errors_of(lesson),
      ElementsAre("a.json:1:1: the key \"title\" is missing, such as \"title\": \"Lantern fair\"",
                  "a.json:1:15: \"titel\" is not a key of a lesson; did you mean \"title\"?",
                  "a.json:3:49: problem a, edge: a measure is text with its unit; found the number 7, write "
                  "\"7 cm\"",
                  "a.json:3:61: problem a: \"find\" is a list of what to find, such as [\"surface_area\"]; found the "
                  "text \"volume\"",
                  "a.json:5:10: problem a: an earlier problem already has the id \"a\": give each problem its own",
                  "a.json:5:80: problem a, base.side: \"6 cm^2\" is an area; it should be a length, such as \"9 cm\"",
                  "a.json:5:91: problem a: \"hight\" is not a key of a pyramid; did you mean \"height\"?"));
}

TEST(ReadLesson, ReadsEveryPartOfAProblem) {
  const auto lesson = read_lesson(
      lesson_with(R"(, "prompt": "How much?", "known": {"volume": "315 cm^3"}, "find": ["surface_area", "height"],
        "supply": {"fill": "volume", "each": "50 mL", "item": "cup"})"));
  ASSERT_TRUE(lesson.has_value()) << told(lesson.error()).front();
  const Problem& read = lesson->problems.front();
  EXPECT_EQ(lesson->title, "T");
  EXPECT_EQ(read.id, "p");
  EXPECT_EQ(read.prompt, "How much?");
  EXPECT_EQ(read.known.at("volume").text, "315 cm^3");
  EXPECT_THAT(find_of(read), ElementsAre("surface_area", "height"));
  ASSERT_TRUE(supply_of(read) != nullptr);
  EXPECT_EQ(supply_of(read)->purpose, Purpose::Fill);
  EXPECT_EQ(supply_of(read)->each->text, "50 mL");
  EXPECT_EQ(supply_of(read)->item, "cup");
  EXPECT_EQ(read.solid.name(), "rectangular prism");
}

// What Solid::make finds is told at the measure that it names.
TEST(ReadLesson, PlacesWhatCannotBeAtItsMeasure) {
  const auto findings = findings_of(
      lesson_with_solid(R"({"kind": "pyramid", "base": {"shape": "square", "side": "6 cm"}, "slant_height": "2 cm"})"));
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings.front().kind, Finding::Kind::Impossible);
  EXPECT_EQ(findings.front().measure, "slant_height");
  EXPECT_EQ(findings.front().place, (Place{1, 144}));
  EXPECT_THAT(said(findings.front().message), testing::HasSubstr("slant height"));
}

TEST(ReadLesson, SaysWhichMeasureIsMissing) {
  const auto findings = findings_of(
      lesson_with_solid(R"({"kind": "rectangular prism", "length": "9 cm", "width": "7 cm", "height": "?"})"));
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings.front().kind, Finding::Kind::Missing);
  EXPECT_EQ(findings.front().problem, "p");
}

TEST(ReadLesson, KeepsTheLimitOfBytes) {
  std::string lesson = lesson_with("");
  lesson += std::string(limits::bytes - lesson.size(), ' ');
  EXPECT_THAT(errors_of(lesson), IsEmpty());
  EXPECT_THAT(errors_of(lesson + " "),
              ElementsAre("a.json:1:1: the file has 4194305 bytes; a lesson has at most 4194304"));
}

TEST(ReadLesson, KeepsTheLimitOfProblems) {
  const auto lesson_of = [](std::size_t count) {
    std::string problems;
    for (std::size_t i = 0; i < count; ++i) {
      problems += (i == 0 ? "" : ",\n") + std::string(R"({"id": "p)") + std::to_string(i) +
                  R"(", "solid": {"kind": "cube", "edge": "7 cm"}})";
    }
    return R"({"lesson": 1, "title": "T", "problems": [)" + problems + "]}";
  };
  EXPECT_THAT(errors_of(lesson_of(limits::problems)), IsEmpty());
  EXPECT_THAT(errors_of(lesson_of(limits::problems + 1)),
              ElementsAre("a.json:1001:1: a lesson has at most 1000 problems; this one has 1001"));
}

TEST(ReadLesson, KeepsTheLimitOfNesting) {
  const std::string deep = std::string(20, '[') + std::string(20, ']');
  EXPECT_THAT(
      errors_of(R"({"lesson": )" + deep + "}"),
      ElementsAre("a.json:1:27: lists and objects are nested more than 16 deep here; a lesson needs far fewer"));
}

TEST(ReadLesson, KeepsTheLimitOfCorners) {
  std::string vertices;
  for (int i = 0; i < 41; ++i) {
    vertices += (i == 0 ? "[" : ", [") + std::to_string(i) + ", 0]";
  }
  EXPECT_THAT(
      errors_of(lesson_with_solid(R"({"kind": "prism", "base": {"shape": "polygon", "unit": "cm", "vertices": [)" +
                                  vertices + R"(]}, "height": "7 cm"})")),
      ElementsAre("a.json:1:136: problem p, base.vertices: this list has 41 items; it should have 3 to 40"));
}

TEST(ReadLesson, AcceptsTheMostAndTheLeastLength) {
  EXPECT_THAT(errors_of(lesson_with_solid(R"({"kind": "cube", "edge": "1000 km"})")), IsEmpty());
  EXPECT_THAT(errors_of(lesson_with_solid(R"({"kind": "cube", "edge": "0.001 mm"})")), IsEmpty());
}

}  // namespace
}  // namespace fw::lessons::read_lesson_test
