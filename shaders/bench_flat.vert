// Faces in one flat color: those without a hatch, the depth pass, the face-id picture.
layout(location = 0) in vec3 position;
layout(location = 2) in vec4 fill;  // premultiplied

uniform mat4 view_projection;

flat out vec4 face_fill;

void main() {
  gl_Position = view_projection * vec4(position, 1.0);
  face_fill = fill;
}
