// A line of the bench as a quad on the screen: so many pixels wide whatever the driver can draw.
layout(location = 0) in vec3 from;
layout(location = 1) in vec3 to;
layout(location = 2) in vec2 corner;  // 0 or 1 along the line; -1 or 1 across it
layout(location = 3) in vec4 ink;     // premultiplied
layout(location = 4) in vec3 stroke;  // width, dash, gap; in pixels

uniform mat4 view_projection;
uniform vec2 viewport_px;

out vec2 place_px;             // along the line from its start; across from its middle
flat out vec2 length_and_half; // of the line in pixels; half its width
flat out vec2 dash_and_period;
flat out vec4 line_ink;

void main() {
  vec4 clip_from = view_projection * vec4(from, 1.0);
  vec4 clip_to = view_projection * vec4(to, 1.0);
  vec3 start = clip_from.xyz / clip_from.w;
  vec3 end = clip_to.xyz / clip_to.w;
  vec2 way_px = (end.xy - start.xy) * 0.5 * viewport_px;
  float length_px = length(way_px);
  vec2 along = length_px > 1e-4 ? way_px / length_px : vec2(1.0, 0.0);
  vec2 across = vec2(-along.y, along.x);

  // A pixel more than the stroke on every side, where it fades out.
  float half_px = 0.5 * stroke.x;
  float reach_px = half_px + 1.0;
  float beyond_px = (corner.x * 2.0 - 1.0) * reach_px;
  vec2 shift_px = along * beyond_px + across * (corner.y * reach_px);
  vec3 end_point = corner.x < 0.5 ? start : end;
  // Depth runs on past the ends level, so that a round end is not cut by the face it stands on.
  gl_Position = vec4(end_point.xy + shift_px * 2.0 / viewport_px, end_point.z, 1.0);

  place_px = vec2(corner.x * length_px + beyond_px, corner.y * reach_px);
  length_and_half = vec2(length_px, half_px);
  dash_and_period = vec2(stroke.y, stroke.y + stroke.z);
  line_ink = ink;
}
