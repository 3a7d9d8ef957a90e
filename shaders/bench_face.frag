// A hatched face of the bench: its color, and the hatch over it.
in vec2 lattice;
flat in vec4 face_fill;
flat in vec4 face_ink;
flat in float face_hatch;

layout(location = 0) out vec4 color;  // premultiplied

const float line_share = 0.10;  // of the period
const float dot_radius = 0.16;  // of the period

void main() {
  vec2 pixel = max(fwidth(lattice), 1e-6);
  vec2 off_middle = abs(fract(lattice) - 0.5);
  float coarsest = max(pixel.x, pixel.y);

  // The shares of the pixel that the lines, the other lines and the dots cover. Where a pixel is as wide as a
  // period they melt into their means, so that they do not shimmer.
  // A line that is thinner than a pixel is drawn a pixel wide, and as much paler.
  vec2 wide = max(vec2(line_share), pixel);
  vec2 lines = clamp((0.5 * wide - off_middle) / pixel + 0.5, 0.0, 1.0) * (line_share / wide);
  vec3 sharp = vec3(lines, clamp((dot_radius - length(off_middle)) / coarsest + 0.5, 0.0, 1.0));
  vec3 mean = vec3(line_share, line_share, 3.14159265 * dot_radius * dot_radius);
  vec3 melted = smoothstep(0.35, 0.7, vec3(pixel, coarsest));
  vec3 share = mix(sharp, mean, melted);

  float cover = share.x;
  if (face_hatch > 4.5) {
    cover = share.x + share.y - share.x * share.y;
  } else if (face_hatch > 2.5 && face_hatch < 3.5) {
    cover = share.z;
  }
  color = face_ink * cover + face_fill * (1.0 - face_ink.a * cover);
}
