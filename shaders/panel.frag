// Panels and their texts: a color, as opaque as the picture of the type is there.
in vec2 atlas_place;
in vec4 panel_tint;

uniform sampler2D atlas;  // its red channel is the opacity

layout(location = 0) out vec4 color;

void main() {
  color = vec4(panel_tint.rgb, panel_tint.a * texture(atlas, atlas_place).r);
}
