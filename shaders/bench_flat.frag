flat in vec4 face_fill;

layout(location = 0) out vec4 color;  // premultiplied

void main() {
  color = face_fill;
}
