#include "cli/picture_file.hpp"

#include <cairo.h>

#include <charconv>
#include <iostream>
#include <memory>

namespace fw::cli {
namespace {

constexpr int least_side = 64;
constexpr int greatest_side = 8192;

struct SurfaceCloser {
  void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
};

}  // namespace

std::optional<PictureSize> picture_size(const std::string& text) {
  PictureSize size;
  const char* end = text.data() + text.size();
  const auto width = std::from_chars(text.data(), end, size.width);
  const bool parted = width.ptr != end && *width.ptr == 'x';
  const bool whole = parted && std::from_chars(width.ptr + 1, end, size.height).ptr == end;
  const auto fits = [](int side) { return side >= least_side && side <= greatest_side; };
  if (!whole || !fits(size.width) || !fits(size.height)) {
    std::cerr << "foldwright: --size " << text
              << " is no size: write WIDTHxHEIGHT in pixels, such as 1280x720, each from " << least_side << " to "
              << greatest_side << ".\n";
    return std::nullopt;
  }
  return size;
}

Result<std::string, std::string> png_bytes(const render::Picture& picture) {
  const std::unique_ptr<cairo_surface_t, SurfaceCloser> surface(
      cairo_image_surface_create(CAIRO_FORMAT_ARGB32, picture.width, picture.height));
  if (cairo_surface_status(surface.get()) != CAIRO_STATUS_SUCCESS) {
    return failure(std::string(cairo_status_to_string(cairo_surface_status(surface.get()))));
  }
  cairo_surface_flush(surface.get());
  unsigned char* rows = cairo_image_surface_get_data(surface.get());
  const int stride = cairo_image_surface_get_stride(surface.get());
  for (int y = 0; y < picture.height; ++y) {
    auto* row = reinterpret_cast<std::uint32_t*>(rows + static_cast<std::ptrdiff_t>(y) * stride);
    for (int x = 0; x < picture.width; ++x) {
      const auto pixel = picture.at(x, y);  // both sides hold colors premultiplied by the opacity
      row[x] = (std::uint32_t{pixel[3]} << 24U) | (std::uint32_t{pixel[0]} << 16U) | (std::uint32_t{pixel[1]} << 8U) |
               std::uint32_t{pixel[2]};
    }
  }
  cairo_surface_mark_dirty(surface.get());
  std::string bytes;
  const cairo_write_func_t append = [](void* closure, const unsigned char* data, unsigned int length) {
    static_cast<std::string*>(closure)->append(reinterpret_cast<const char*>(data), length);
    return CAIRO_STATUS_SUCCESS;
  };
  const cairo_status_t status = cairo_surface_write_to_png_stream(surface.get(), append, &bytes);
  if (status != CAIRO_STATUS_SUCCESS) {
    return failure(std::string(cairo_status_to_string(status)));
  }
  return bytes;
}

}  // namespace fw::cli
