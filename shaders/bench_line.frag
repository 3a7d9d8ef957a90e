// A line of the bench: round ends, soft rims, dashes.
in vec2 place_px;
flat in vec2 length_and_half;
flat in vec2 dash_and_period;
flat in vec4 line_ink;  // premultiplied

layout(location = 0) out vec4 color;  // premultiplied

void main() {
  float beyond = max(max(-place_px.x, place_px.x - length_and_half.x), 0.0);
  float off_line = length(vec2(beyond, place_px.y));
  float cover = clamp(length_and_half.y + 0.5 - off_line, 0.0, 1.0);
  if (dash_and_period.x > 0.0 && dash_and_period.y > dash_and_period.x) {
    float in_period = mod(max(place_px.x, 0.0), dash_and_period.y);
    float off_dash = abs(in_period - 0.5 * dash_and_period.x);
    off_dash = min(off_dash, dash_and_period.y - off_dash);
    cover *= clamp(0.5 * dash_and_period.x + 0.5 - off_dash, 0.0, 1.0);
  }
  color = line_ink * cover;
}
