// A face of the bench: where it is, and where on the face's own plane.
layout(location = 0) in vec3 position;
layout(location = 1) in vec2 flat_position;
layout(location = 2) in vec4 fill;
layout(location = 3) in vec4 hatch_ink;
layout(location = 4) in vec2 hatch;  // which one; lines a model unit

uniform mat4 view_projection;

out vec2 hatch_position;  // in periods of the hatch
flat out vec4 face_fill;
flat out vec4 face_ink;
flat out float face_hatch;

void main() {
  gl_Position = view_projection * vec4(position, 1.0);
  hatch_position = flat_position * hatch.y;
  face_fill = fill;
  face_ink = hatch_ink;
  face_hatch = hatch.x;
}
