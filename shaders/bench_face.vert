// A hatched face of the bench: where it is, and where on the lattice of its hatch.
layout(location = 0) in vec3 position;
layout(location = 1) in vec2 flat_position;
layout(location = 2) in vec4 fill;       // premultiplied, as is the ink
layout(location = 3) in vec4 hatch_ink;
layout(location = 4) in vec2 hatch;      // which one; lines a model unit

uniform mat4 view_projection;

out vec2 lattice;  // in periods of the hatch: across its lines; across its other lines
flat out vec4 face_fill;
flat out vec4 face_ink;
flat out float face_hatch;

const float diagonal = 0.70710678;

void main() {
  gl_Position = view_projection * vec4(position, 1.0);
  face_fill = fill;
  face_ink = hatch_ink;
  face_hatch = hatch.x;
  // Kinds in the order of the program's list: none, rising, level, dots, falling, crossed.
  vec2 across_rising = vec2(-diagonal, diagonal);
  vec2 across_falling = vec2(diagonal, diagonal);
  vec2 across = across_rising;
  vec2 across_others = across_falling;
  if (hatch.x > 1.5 && hatch.x < 3.5) {
    across = vec2(0.0, 1.0);
    across_others = vec2(1.0, 0.0);
  } else if (hatch.x > 3.5 && hatch.x < 4.5) {
    across = across_falling;
  }
  lattice = hatch.y * vec2(dot(flat_position, across), dot(flat_position, across_others));
}
