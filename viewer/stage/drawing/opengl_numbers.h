#pragma once

/// What OpenGL's state is asked for by number; its own (Khronos registry, gl.xml), which VTK's headers do not
/// hand on.
namespace scalpmark::viewer::opengl {

inline constexpr unsigned depth_test = 0x0B71, blend = 0x0BE2;

}  // namespace scalpmark::viewer::opengl
