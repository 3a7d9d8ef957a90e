#include <algorithm>
#include <cmath>

#include "geometry/measure.hpp"
#include "geometry/polygon.hpp"
#include "solids/kind_table.hpp"

namespace fw::solids::kind {
namespace {

using algebra::Expression;
using algebra::Symbol;
using geometry::Vec2;
using geometry::Vec3;

/// How the base's plane and the height above it lie in space: upright, or on one of the sides.
class Frame {
 public:
  Frame(const std::vector<Vec2>& outline, double height, bool lies) : height_(height), lies_(lies) {
    if (lies_) {
      floor_side_ = floor_side(outline);
      const Vec2& start = outline[floor_side_];
      right_ = outline[(floor_side_ + 1) % outline.size()] - start;
      right_ = right_ / glm::length(right_);
      center_ = start;
      const geometry::Box box = turned_box(outline);
      center_ = start + right_ * box.center().x + Vec2(-right_.y, right_.x) * box.lowest.y;
    } else {
      const geometry::Box box = turned_box(outline);
      center_ = {box.center().x, box.center().y};
    }
  }

  [[nodiscard]] Vec3 at(Vec2 point, double level) const {
    const Vec2 offset = turned(point);
    return lies_ ? Vec3(offset.x, height_ / 2 - level, offset.y) : Vec3(offset.x, offset.y, level);
  }
  [[nodiscard]] bool lies() const { return lies_; }
  [[nodiscard]] double height() const { return height_; }
  [[nodiscard]] std::size_t floor_side() const { return floor_side_; }

 private:
  /// The first side that has the whole outline on one side of it, to stand on; side 0 if none has.
  static std::size_t floor_side(const std::vector<Vec2>& outline) {
    for (std::size_t i = 0; i < outline.size(); ++i) {
      const Vec2& start = outline[i];
      const Vec2 along = outline[(i + 1) % outline.size()] - start;
      const bool above = std::all_of(outline.begin(), outline.end(), [&](Vec2 corner) {
        const Vec2 offset = corner - start;
        return along.x * offset.y - along.y * offset.x >= -1e-9 * glm::dot(along, along);
      });
      if (above) {
        return i;
      }
    }
    return 0;
  }
  [[nodiscard]] Vec2 turned(Vec2 point) const {
    const Vec2 offset = point - center_;
    return {glm::dot(offset, right_), right_.x * offset.y - right_.y * offset.x};
  }
  [[nodiscard]] geometry::Box turned_box(const std::vector<Vec2>& outline) const {
    std::vector<Vec3> points;
    for (const Vec2& corner : outline) {
      const Vec2 offset = turned(corner);
      points.emplace_back(offset.x, offset.y, 0.0);
    }
    return geometry::bounding_box(points);
  }

  double height_;
  bool lies_;
  std::size_t floor_side_ = 0;
  Vec2 right_{1, 0};
  Vec2 center_{0, 0};
};

/// How much side i of a counterclockwise outline faces somebody who stands in front, a little to the right.
double facing(const std::vector<Vec2>& outline, std::size_t i) {
  const Vec2 along = outline[(i + 1) % outline.size()] - outline[i];
  const Vec2 outward = Vec2(along.y, -along.x) / glm::length(along);
  return outward.x * 0.5 - outward.y;
}

Mark edge_mark(const Symbol& symbol, const std::string& title, Vec3 from, Vec3 to) {
  Mark mark{symbol, title};
  mark.from = from;
  mark.to = to;
  return mark;
}

struct Parts {
  Symbol h;
  std::vector<std::string> side_titles;
  ShapeBody base;
  std::vector<Vec2> outline;
  Frame frame;
};

void add_side_marks(BodyStatement& body, const Parts& parts) {
  std::vector<Symbol> done;
  for (const Symbol& symbol : parts.base.sides) {
    if (std::find(done.begin(), done.end(), symbol) != done.end()) {
      continue;
    }
    done.push_back(symbol);
    std::size_t best = 0;
    double most = -10;
    for (std::size_t i = 0; i < parts.base.sides.size(); ++i) {
      const double score = parts.frame.lies() && i == parts.frame.floor_side() ? 5 : facing(parts.outline, i);
      if (parts.base.sides[i] == symbol && score > most) {
        most = score;
        best = i;
      }
    }
    const double level = parts.frame.lies() || most < 0 ? parts.frame.height() : 0;
    const std::size_t next = (best + 1) % parts.outline.size();
    Mark mark = edge_mark(symbol, parts.side_titles[best], parts.frame.at(parts.outline[best], level),
                          parts.frame.at(parts.outline[next], level));
    for (const ShapeLength& length : parts.base.lengths) {
      if (length.square_at_to && length.symbol == symbol) {
        mark.from = parts.frame.at(flat(length.from), level);
        mark.to = parts.frame.at(flat(length.to), level);
        mark.square_to = parts.frame.at(parts.outline[next == 0 ? 1 : next], level) - mark.to;
        mark.square_to = mark.square_to / glm::length(mark.square_to);
      }
    }
    body.marks.push_back(mark);
  }
}

void add_height_mark(BodyStatement& body, const Parts& parts) {
  std::size_t best = 0;
  double most = -1e300;
  for (std::size_t i = 0; i < parts.outline.size(); ++i) {
    const Vec3 corner = parts.frame.at(parts.outline[i], parts.frame.height());
    const double score = parts.frame.lies() ? corner.x - corner.z * 0.5 : corner.x - corner.y;
    if (score > most) {
      most = score;
      best = i;
    }
  }
  body.marks.push_back(edge_mark(parts.h, "height of the prism", parts.frame.at(parts.outline[best], 0),
                                 parts.frame.at(parts.outline[best], parts.frame.height())));
}

void add_inner_marks(BodyStatement& body, const Parts& parts) {
  const double top = parts.frame.height();
  const Vec2 middle = geometry::centroid(parts.outline);
  const Vec3 normal = parts.frame.at(middle, 1) - parts.frame.at(middle, 0);
  for (const ShapeLength& length : parts.base.lengths) {
    if (std::find(parts.base.sides.begin(), parts.base.sides.end(), length.symbol) != parts.base.sides.end()) {
      continue;
    }
    Mark mark = edge_mark(length.symbol, length.title, parts.frame.at(flat(length.from), top),
                          parts.frame.at(flat(length.to), top));
    mark.place = MarkPlace::OnFace;
    mark.face = 1;
    if (length.is_height) {
      mark.square_to = opening(mark.from, mark.to, normal, parts.frame.at(middle, top));
    }
    body.marks.push_back(mark);
  }
}

void add_faces(BodyStatement& body, const Parts& parts, const ShapeStatement& shape,
               const algebra::Bindings& bindings) {
  const std::size_t n = parts.outline.size();
  const double top = parts.frame.height();
  for (const double level : {0.0, top}) {
    FaceStatement face;
    face.role = FaceRole::Base;
    face.shape = shape.noun;
    face.area = shape.area;
    for (const ShapeLength& length : parts.base.lengths) {
      face.lengths.push_back({length.symbol, length.title, parts.frame.at(flat(length.from), level),
                              parts.frame.at(flat(length.to), level), length.is_height});
    }
    body.faces.push_back(face);
  }
  const exact::Number height = value_of(bindings, parts.h);
  for (std::size_t i = 0; i < n; ++i) {
    const std::size_t next = (i + 1) % n;
    FaceStatement face;
    face.role = FaceRole::Lateral;
    face.shape = value_of(bindings, parts.base.sides[i]) == height ? "square" : "rectangle";
    face.area = Expression(parts.base.sides[i]) * parts.h;
    face.lengths = {{parts.base.sides[i], parts.side_titles[i], parts.frame.at(parts.outline[i], 0),
                     parts.frame.at(parts.outline[next], 0)},
                    {parts.h, "height of the prism", parts.frame.at(parts.outline[next], 0),
                     parts.frame.at(parts.outline[next], top)}};
    body.faces.push_back(face);
  }
}

void add_surface(BodyStatement& body, const Parts& parts) {
  const std::size_t n = parts.outline.size();
  for (const double level : {0.0, parts.frame.height()}) {
    for (const Vec2& corner : parts.outline) {
      body.vertices.push_back(parts.frame.at(corner, level));
    }
  }
  std::vector<std::size_t> bottom;
  std::vector<std::size_t> top;
  for (std::size_t i = 0; i < n; ++i) {
    bottom.push_back(n - 1 - i);
    top.push_back(n + i);
  }
  body.loops = {bottom, top};
  for (std::size_t i = 0; i < n; ++i) {
    const std::size_t next = (i + 1) % n;
    body.loops.push_back({i, next, n + next, n + i});
  }
  body.table_face = parts.frame.lies() ? 2 + parts.frame.floor_side() : 0;
}

/// A strip of the lateral faces, cut open opposite the face that carries both bases.
void add_net(BodyStatement& body, const Parts& parts, bool is_convex) {
  const std::size_t n = parts.outline.size();
  const std::size_t carrier = parts.frame.lies() ? parts.frame.floor_side() : 0;
  const std::size_t cut = (carrier + n / 2 + 1) % n;
  for (std::size_t i = 0; i + 1 < n; ++i) {
    body.classic_hinges.push_back({2 + (cut + i) % n, 2 + (cut + i + 1) % n});
  }
  body.classic_hinges.push_back({0, 2 + carrier});
  body.classic_hinges.push_back({1, 2 + carrier});
  if (!is_convex) {
    choose_net(body, 2, n);
  }
}

BodyStatement body_of(const ShapeStatement& shape, const Symbol& h, bool lies,
                      const std::vector<std::string>& side_titles, const algebra::Bindings& bindings) {
  const ShapeBody base = shape.body(bindings);
  std::vector<Vec2> outline;
  for (const ExactPoint& corner : base.corners) {
    outline.push_back(flat(corner));
  }
  const Parts parts{h, side_titles, base, outline, Frame(outline, double_of(bindings, h), lies)};
  BodyStatement body;
  add_surface(body, parts);
  add_faces(body, parts, shape, bindings);
  add_side_marks(body, parts);
  add_inner_marks(body, parts);
  add_height_mark(body, parts);
  add_net(body, parts, shape.is_convex);
  return body;
}

void name(SolidStatement& statement, const ShapeStatement& base, const Description& description) {
  std::vector<std::string> names = base.prism_names;
  names.push_back(name_of({"right", base.adjective, "prism"}));
  if (base.is_regular) {
    names.push_back(name_of({"regular", base.adjective, "prism"}));
  }
  name_after_base(statement, base, "prism", names);
  const auto height = written_length(description, "height");
  if (base.is_regular && base.sides.size() == 4 && height &&
      written_length(description.base.front(), "side") == height) {
    call_it(statement, "cube");
  }
}

StatedSolid stated_prism(const Description& description, const ShapeStatement* base) {
  const Symbol h{"height", "h", 1};
  SolidStatement statement;
  name(statement, *base, description);
  statement.measures = base->measures;
  statement.measures.push_back(measure(h, "height", "height"));
  statement.relations = base->relations;
  statement.assumptions = base->assumptions;
  const Expression b = symbols::base_area();
  statement.volume = algebra::Equation{symbols::volume(), b * h};
  statement.relations.push_back(
      {{symbols::lateral_area(), Expression(symbols::perimeter()) * h},
       message(
           "laid side by side, the lateral faces make one rectangle, and its length is the perimeter of the base")});
  statement.relations.push_back({{symbols::surface_area(), Expression(2) * b + symbols::lateral_area()},
                                 message("two congruent bases and the lateral faces make up the surface")});
  statement.relations.push_back(
      {*statement.volume, message("the volume of a prism is the base area times the height")});
  statement.conditions = base->conditions;
  statement.conditions.push_back({symbols::surface_area(), Expression(2) * b, "surface_area",
                                  message("the surface area must be more than the two bases together")});
  const bool lies =
      description.fields.count("lies") != 0 && description.fields.at("lies") == FieldValue(std::string("side"));
  std::vector<std::string> titles;
  for (const Symbol& side : base->sides) {
    const auto found =
        std::find_if(base->measures.begin(), base->measures.end(), [&](const Measure& m) { return m.symbol == side; });
    titles.push_back(found == base->measures.end() ? "side" : found->title);
  }
  statement.body = [shape = *base, h, lies, titles](const algebra::Bindings& bindings) {
    return body_of(shape, h, lies, titles, bindings);
  };
  return statement;
}

}  // namespace

Kind prism() {
  Field lies;
  lies.key = "lies";
  lies.type = FieldType::Word;
  lies.title = "how it lies";
  lies.words = {"base", "side"};
  return {"prism",          {length_field("height", "height", "height"), lies},    true, &stated_prism,
          upright_traits(), example("prism", {{"height", length_entry("11 cm")}}), {},   {Use::Upright}};
}

}  // namespace fw::solids::kind
