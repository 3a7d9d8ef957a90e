#pragma once

// The room's only include of GLM; doubles are for coordinates, cameras and pixels.
#include <glm/geometric.hpp>
#include <glm/mat4x4.hpp>
#include <glm/vec2.hpp>
#include <glm/vec3.hpp>
#include <glm/vec4.hpp>

namespace fw::geometry {

using Vec2 = glm::dvec2;
using Vec3 = glm::dvec3;
using Vec4 = glm::dvec4;
using Mat4 = glm::dmat4;

}  // namespace fw::geometry
