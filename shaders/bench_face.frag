// A face of the bench: its color, and the hatch over it.
in vec2 hatch_position;
flat in vec4 face_fill;
flat in vec4 face_ink;
flat in float face_hatch;

layout(location = 0) out vec4 color;  // premultiplied

const float line_share = 0.16;  // of the period
const float dot_radius = 0.2;   // of the period
const float diagonal = 0.70710678;

// The share of the pixel that parallel lines cover; `across` counts periods. Where a pixel is as wide as a
// period the lines melt into their mean, so that they do not shimmer.
float lines(float across) {
  float pixel = max(fwidth(across), 1e-6);
  float off_line = abs(fract(across) - 0.5);
  float sharp = clamp((0.5 * line_share - off_line) / pixel + 0.5, 0.0, 1.0);
  return mix(sharp, line_share, smoothstep(0.35, 0.7, pixel));
}

float dots(vec2 place) {
  float pixel = max(max(fwidth(place.x), fwidth(place.y)), 1e-6);
  float off_dot = length(fract(place) - 0.5);
  float sharp = clamp((dot_radius - off_dot) / pixel + 0.5, 0.0, 1.0);
  return mix(sharp, 3.14159265 * dot_radius * dot_radius, smoothstep(0.35, 0.7, pixel));
}

// Kinds in the order of the program's list: none, rising, level, dots, falling, crossed.
float hatched(float kind) {
  float rising = lines((hatch_position.y - hatch_position.x) * diagonal);
  float falling = lines((hatch_position.x + hatch_position.y) * diagonal);
  if (kind < 1.5) return rising;
  if (kind < 2.5) return lines(hatch_position.y);
  if (kind < 3.5) return dots(hatch_position);
  if (kind < 4.5) return falling;
  return max(rising, falling);
}

void main() {
  color = vec4(face_fill.rgb * face_fill.a, face_fill.a);
  // A face has one hatch all over, so neighboring pixels take the same way and the derivatives hold.
  if (face_hatch > 0.5) {
    float cover = hatched(face_hatch) * face_ink.a;
    color = vec4(face_ink.rgb * cover, cover) + color * (1.0 - cover);
  }
}
