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
  vec3 sharp = vec3((0.5 * line_share - off_middle) / pixel, (dot_radius - length(off_middle)) / coarsest);
  vec3 mean = vec3(line_share, line_share, 3.14159265 * dot_radius * dot_radius);
  vec3 melted = smoothstep(0.35, 0.7, vec3(pixel, coarsest));
  vec3 share = mix(clamp(sharp + 0.5, 0.0, 1.0), mean, melted);

  float cover = share.x;
  if (face_hatch > 4.5) {
    cover = share.x + share.y - share.x * share.y;
  } else if (face_hatch > 2.5 && face_hatch < 3.5) {
    cover = share.z;
  }
  color = face_ink * cover + face_fill * (1.0 - face_ink.a * cover);
}
