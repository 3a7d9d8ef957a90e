// Faces as bare shapes: for the depth pass and for the face-id picture.
layout(location = 0) in vec3 position;
layout(location = 2) in vec4 fill;

uniform mat4 view_projection;

flat out vec4 face_fill;

void main() {
  gl_Position = view_projection * vec4(position, 1.0);
  face_fill = fill;
}
