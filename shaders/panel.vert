// A corner of a panel's triangle: where it is, and where on the picture of the type.
layout(location = 0) in vec2 place;     // from the upper left corner, in the units of `size`
layout(location = 1) in vec2 on_atlas;  // 0 to 1
layout(location = 2) in vec4 tint;      // not premultiplied

uniform vec2 size;

out vec2 atlas_place;
out vec4 panel_tint;

void main() {
  gl_Position = vec4(place.x * 2.0 / size.x - 1.0, 1.0 - place.y * 2.0 / size.y, 0.0, 1.0);
  atlas_place = on_atlas;
  panel_tint = tint;
}
