#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include "lesson_texts.hpp"
#include "lessons/json_text.hpp"
#include "lessons/write_lesson.hpp"
#include "lessons/write_sheet.hpp"
#include "solids/body/body_nets.hpp"
#include "solids/catalog.hpp"
#include "tasks/nets/net_task.hpp"

namespace fw::lessons::net_test {
namespace {

using testing::ElementsAre;

// A box of 9 by 7 by 5. Faces: 1 bottom, 2 top, 3 front, 4 back, 5 left, 6 right. The bottom with its four sides:
const std::string open_box =
    R"({"face": 1}, {"face": 5, "on": 1, "edge": 1, "by": 1}, {"face": 4, "on": 1, "edge": 2, "by": 1}, )"
    R"({"face": 6, "on": 1, "edge": 3, "by": 1}, {"face": 3, "on": 1, "edge": 4, "by": 1})";
const std::string lid = R"({"face": 2, "on": 3, "edge": 3, "by": 3})";

std::string with_net(const std::string& net) { return lesson_with(R"(, "net": )" + net); }
Task task_of(const std::string& net) {
  const auto lesson = read_lesson(with_net(net));
  EXPECT_TRUE(lesson.has_value()) << (lesson ? "" : told(lesson.error()).front());
  return lesson->problems.front().tasks.front();
}
std::vector<std::string> errors_without_place(const std::string& net) {
  std::vector<std::string> errors = errors_of(with_net(net));
  for (std::string& error : errors) {
    error = error.substr(error.find("problem p"));
  }
  return errors;
}

TEST(NetTask, IsReadWithItsPiecesAndTheWayItLies) {
  const Task read =
      task_of(R"({"ask": "is_it", "pieces": [)" + open_box + ", " + lid + R"(], "turn": 90, "flip": true})");
  const auto& task = *read.as<tasks::NetTask>();
  ASSERT_EQ(task.sheets().size(), 1U);
  const NetSheet& sheet = task.sheets().front();
  EXPECT_EQ(sheet.turn_degrees, 90);
  EXPECT_TRUE(sheet.flipped);
  EXPECT_EQ(sheet.cutout.pieces().size(), 6U);
  EXPECT_EQ(sheet.pieces[5].face, geometry::FaceId::at(1));
  EXPECT_EQ(sheet.pieces[5].joint, (nets::Joint{nets::PieceId::at(2), 2, 2}));
  EXPECT_EQ(geometry::signed_area(sheet.cutout.pieces()[nets::PieceId::at(0)].shape), 63);
}

TEST(NetTask, TakesCornersInAnyUnitForAPieceThatIsNoFace) {
  const Task task = task_of(R"({"ask": "is_it", "pieces": [{"face": 1},
    {"corners": [[0, 0], [90, 0], [90.0, "22 1/2"], [0, 22.5]], "unit": "mm", "on": 1, "edge": 2, "by": 1}]})");
  const nets::Cutout& cutout = task.as<tasks::NetTask>()->sheets().front().cutout;
  EXPECT_DOUBLE_EQ(nets::edge_length(cutout, {nets::PieceId::at(1), 0}), 9);
  EXPECT_DOUBLE_EQ(nets::edge_length(cutout, {nets::PieceId::at(1), 1}), 2.25);
}

TEST(NetTask, CompletesTheNetAtEachPlace) {
  const std::string text = R"({"ask": "complete", "pieces": [)" + open_box + R"(], "missing": {"face": 2},
    "places": [{"on": 3, "edge": 3, "by": 3}, {"on": 5, "edge": 3, "by": 1}, {"on": 4, "edge": 3, "by": 1}]})";
  const auto lesson = read_lesson(with_net(text));
  ASSERT_TRUE(lesson.has_value()) << told(lesson.error()).front();
  const Problem& problem = lesson->problems.front();
  std::vector<bool> right;
  for (std::size_t place = 0; place < tasks::net_asked(problem)->places().size(); ++place) {
    const nets::Cutout whole = tasks::net_asked(problem)->cutout_for(problem, place);
    right.push_back(solids::fold_test(problem.solid.body(), whole).is_net());
  }
  EXPECT_THAT(right, ElementsAre(true, true, false));
}

TEST(NetErrors, NameThePlaceAndWhatWouldBeRight) {
  EXPECT_THAT(errors_of(with_net("7")),
              ElementsAre("a.json:1:154: problem p, net: \"net\" is an object such as {\"ask\": \"is_it\", \"pieces\": "
                          "[{\"face\": 1}, {\"face\": 3, \"on\": 1, \"edge\": 2, \"by\": 1}]}; found the number 7"));
  EXPECT_THAT(errors_without_place(R"({"pieces": []})"),
              ElementsAre("problem p, net: the key \"ask\" is missing here; what can go here is \"name\", \"choose\", "
                          "\"is_it\" or \"complete\""));
  EXPECT_THAT(errors_without_place(R"({"ask": "isit"})"),
              ElementsAre("problem p, net.ask: \"isit\" can't be asked about a net; did you mean \"is_it\"?"));
  EXPECT_THAT(errors_without_place(R"({"ask": "is_it"})"),
              ElementsAre("problem p, net: the key \"pieces\" is missing here: a list of 1 to 60 items"));
  EXPECT_THAT(errors_without_place(R"({"ask": "is_it", "pieces": []})"),
              ElementsAre("problem p, net.pieces: \"pieces\" is a list of 1 to 60 items; found a list of 0"));
  EXPECT_THAT(errors_without_place(R"({"ask": "name", "pieces": [{"face": 1}], "nets": []})"),
              ElementsAre("problem p, net: this is not a net of a rectangular prism, so the problem can't ask for the "
                          "name: fix the pieces, or ask \"is_it\"",
                          "problem p, net: \"nets\" is not a key of a question about a net like this; what can go here "
                          "is \"ask\", \"pieces\", \"turn\" or \"flip\""));
  EXPECT_THAT(errors_without_place(R"({"ask": "is_it", "pieces": [{"face": 1}], "turn": 360, "flip": "no"})"),
              ElementsAre("problem p, net.turn: the number 360 is out of range: it should be at most 359",
                          "problem p, net.flip: \"flip\" is true or false; found the text \"no\""));
}

TEST(NetErrors, OfPieces) {
  const auto second = [](const std::string& piece) {
    return errors_without_place(R"({"ask": "is_it", "pieces": [{"face": 1}, )" + piece + "]}");
  };
  EXPECT_THAT(second("3"), ElementsAre("problem p, net.pieces.2: a piece is an object such as {\"face\": 3, \"on\": 1, "
                                       "\"edge\": 2, \"by\": 1}; found the number 3"));
  EXPECT_THAT(second(R"({"face": 7, "on": 1, "edge": 1, "by": 1})"),
              ElementsAre("problem p, net.pieces.2.face: the number 7 is out of range: it should be 1 to 6"));
  EXPECT_THAT(second(R"({"face": 3, "on": 1, "edge": 1})"),
              ElementsAre("problem p, net.pieces.2: the key \"by\" is missing here: a piece hangs on another one as in "
                          "{\"face\": 3, \"on\": 1, \"edge\": 2, \"by\": 1}"));
  EXPECT_THAT(second(R"({"on": 1, "edge": 1, "by": 1})"),
              ElementsAre("problem p, net.pieces.2: a piece has either \"face\", the number of the face that it is a "
                          "copy of, or \"corners\""));
  EXPECT_THAT(second(R"({"face": 3, "unit": "cm", "on": 1, "edge": 1, "by": 1})"),
              ElementsAre("problem p, net.pieces.2: \"unit\" is not a key of a piece written this way; what can go "
                          "here is \"face\", \"corners\", \"on\", \"edge\" or \"by\""));
  EXPECT_THAT(second(R"({"face": 3, "on": 2, "edge": 1, "by": 1})"),
              ElementsAre("problem p, net.pieces.2.on: piece 2 can only hang on a piece before it, 1 to 1"));
  EXPECT_THAT(second(R"({"face": 3, "on": 1, "edge": 5, "by": 1})"),
              ElementsAre("problem p, net.pieces.2.edge: piece 1 has edges 1 to 4"));
  EXPECT_THAT(second(R"({"corners": [[0, 0], [0, 9], [9, 0]], "on": 1, "edge": 1, "by": 1})"),
              ElementsAre("problem p, net.pieces.2.corners: the corners of piece 2 run clockwise: list them "
                          "counterclockwise"));
  EXPECT_THAT(second(R"({"corners": [[0, 0], [9, 0]], "unit": "pound", "on": 1, "edge": 1, "by": 1})"),
              ElementsAre("problem p, net.pieces.2.corners: this list has 2 items; it should have 3 to 40",
                          testing::StartsWith("problem p, net.pieces.2.unit: \"pound\" can't go here")));
  EXPECT_THAT(errors_without_place(R"({"ask": "is_it", "pieces": [{"face": 1, "on": 1}]})"),
              ElementsAre("problem p, net.pieces.1: \"on\" is not a key of a piece that is joined to no other; what "
                          "can go here is \"face\" or \"corners\""));
  // At the end of the left side, and wider than it, so that it reaches over the front.
  EXPECT_THAT(
      errors_without_place(R"({"ask": "is_it", "pieces": [)" + open_box +
                           R"(, {"corners": [[0, 0], [5, 0], [9, 4], [-4, 4]], "on": 2, "edge": 2, "by": 1}]})"),
      ElementsAre(
          "problem p, net.pieces: pieces 5 and 6 overlap: a cut-out is one flat sheet of paper, so move one of them"));
}

TEST(NetErrors, OfWhatHasNoAnswer) {
  const std::string net = R"({"pieces": [)" + open_box + ", " + lid + "]}";
  const std::string five = R"({"pieces": [)" + open_box + "]}";
  EXPECT_THAT(
      errors_without_place(R"({"ask": "choose", "nets": [)" + five + ", " + five + "]}"),
      ElementsAre("problem p, net.nets: none of these is a net of a rectangular prism: exactly one of them must "
                  "be"));
  EXPECT_THAT(errors_without_place(R"({"ask": "choose", "nets": [)" + net + ", " + five + ", " + net + "]}"),
              ElementsAre("problem p, net.nets: numbers 1 and 3 are nets of a rectangular prism: exactly one of them "
                          "must be"));
  EXPECT_THAT(
      errors_without_place(R"({"ask": "choose", "nets": [1, 2]})"),
      ElementsAre("problem p, net.nets.1: a cut-out to choose is an object with \"pieces\"; found the number 1",
                  "problem p, net.nets.2: a cut-out to choose is an object with \"pieces\"; found the number 2"));
  const auto complete = [](const std::string& rest) {
    return errors_without_place(R"({"ask": "complete", "pieces": [)" + open_box + "]" + rest + "}");
  };
  EXPECT_THAT(complete(R"(, "places": [{"on": 3, "edge": 3, "by": 3}, {"on": 3, "edge": 2, "by": 2}])"),
              ElementsAre("problem p, net: the key \"missing\" is missing here: the piece that is not there yet, such "
                          "as {\"face\": 2}"));
  EXPECT_THAT(complete(R"(, "missing": {"face": 2}, "places": [{"on": 4, "edge": 3, "by": 1},
                           {"on": 4, "edge": 3, "by": 2}, 5, {"on": 1, "edge": 1, "by": 1}])"),
              ElementsAre("problem p, net.places.2: this edge is already a place: name each edge once",
                          "problem p, net.places.3: a place is an object such as {\"on\": 1, \"edge\": 2, \"by\": 1}; "
                          "found the number 5",
                          "problem p, net.places.4: edge 1 of piece 1 is joined to another piece already"));
  EXPECT_THAT(complete(R"(, "missing": {"face": 2}, "places": [{"on": 3, "edge": 3, "by": 2},
                           {"on": 4, "edge": 3, "by": 1}])"),
              ElementsAre("problem p, net.places: the piece does not complete a net of a rectangular prism in any of "
                          "these places: at least one place must be right"));
  EXPECT_THAT(errors_of(lesson_with(R"(, "find": ["volume"], "net": {"ask": "is_it", "pieces": [{"face": 1}]})")),
              ElementsAre("a.json:1:155: problem p, find: a problem with \"net\" asks about the net alone: leave "
                          "\"find\" out, or make it a problem of its own"));
}

NetSheet sheet_of(const nets::Cutout& cutout) {
  NetSheet sheet{{}, *rc::gen::inRange(0, 360), *rc::gen::arbitrary<bool>(), cutout};
  for (const nets::Piece& piece : cutout.pieces()) {
    sheet.pieces.push_back({piece.copy_of, {}, "", piece.joint});
  }
  return sheet;
}

// The places of the missing piece: where it was, and other free edges where it would lie flat.
std::vector<nets::Joint> places_for(const nets::Cutout& net, nets::PieceId leaf, const nets::Cutout& rest) {
  const nets::Piece& piece = net.pieces()[leaf];
  nets::Joint joint = *piece.joint;
  joint.on = joint.on > leaf ? nets::PieceId::at(joint.on.index() - 1) : joint.on;
  std::vector<nets::Joint> places{joint};
  for (const nets::PieceEdge& edge : nets::free_edges(rest)) {
    const nets::Joint other{edge.piece, edge.edge, 0};
    const bool is_new = edge.piece != joint.on || edge.edge != joint.edge;
    const nets::Cutout there = nets::with(rest, {piece.shape, piece.copy_of, other});
    if (is_new && places.size() < 5 && nets::overlapping(there).empty()) {
      places.push_back(other);
    }
  }
  return places;
}

std::string completion(const nets::Cutout& net, nets::PieceId leaf, const nets::Cutout& rest) {
  std::vector<std::string> places;
  for (const nets::Joint& place : places_for(net, leaf, rest)) {
    places.push_back("{" + joint_text(place) + "}");
  }
  RC_PRE(places.size() >= 2U);
  return R"({"ask": "complete", )" + sheet_text(sheet_of(rest)) + R"(, "missing": )" +
         piece_text(PieceEntry{net.pieces()[leaf].copy_of}) + R"(, "places": )" + in_line(places, '[', ']') + "}";
}

RC_GTEST_PROP(NetTask, ReadsBackAsTheSameLesson, ()) {
  const std::vector<solids::Description> shelf = solids::shelf();
  const solids::Description description = *rc::gen::elementOf(shelf);
  const auto solid = solids::Solid::make(description);
  RC_PRE(solid.has_value() && solid->faces().size() <= 8 && solids::has_other_nets(solid->body()));
  const auto list = solids::distinct_nets(solid->body(), geometry::FaceId::at(0), 30);
  const nets::Cutout net = solids::cutout_of(solid->body(), *rc::gen::elementOf(list.nets));
  RC_PRE(nets::overlapping(net).empty());
  const nets::PieceId leaf = nets::leaves(net).back();
  const nets::Cutout rest = nets::without(net, leaf);
  const std::string ask = *rc::gen::element<std::string>("name", "is_it", "choose", "complete");
  const std::string choices =
      "\n        {" + sheet_text(sheet_of(rest)) + "},\n        {" + sheet_text(sheet_of(net)) + "}\n      ";
  const std::string asked = ask == "complete" ? completion(net, leaf, rest)
                            : ask == "choose" ? R"({"ask": "choose", "nets": [)" + choices + "]}"
                                              : R"({"ask": ")" + ask + "\", " + sheet_text(sheet_of(net)) + "}";
  std::string text = write_lesson({"Nets", {{"p", "Fold it", description, {}, *solid}}});
  text.insert(text.rfind("\n    }"), ",\n      \"net\": " + asked);
  const auto lesson = read_lesson(text);
  if (!lesson) {
    RC_FAIL(told(lesson.error()).front() + "\n" + text);
  }
  RC_ASSERT(lesson->problems.front().tasks.size() == 1U);
  RC_ASSERT(write_lesson(*lesson) == text);
  RC_ASSERT(*read_lesson(text) == *lesson);
}

}  // namespace
}  // namespace fw::lessons::net_test
