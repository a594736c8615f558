#include "viewer/stage/drawing/stage_room.h"

#include "viewer/stage/drawing/captions.h"

namespace scalpmark::viewer {

Surroundings with_room(const Surroundings& around, double width_px, double scale) {
  constexpr double least_head_px = 0.75 * column_px;
  Surroundings fitting = around;
  if (!around.with_column || width_px - (column_px + stage_margin_px) * scale >= least_head_px * scale)
    return fitting;
  fitting.with_column = false;
  fitting.numbers.reset();
  fitting.legend.clear();
  fitting.depth_curve.reset();
  fitting.remarks.clear();
  for (const Remark& remark : around.remarks)
    if (remark.weight == Remark::Weight::quiet && !around.caution.empty())
      fitting.caution = remark.text + " " + fitting.caution;
  return fitting;
}

double caution_share_of(Overlay& overlay, const Surroundings& around, double width_px, double height_px,
                        double scale) {
  return fitting_caution_share(overlay, around.caution, around.caution_share, width_px, height_px, scale);
}

Box room_for_head(Overlay& overlay, const Surroundings& around, double width_px, double height_px,
                  double scale) {
  const double margin = stage_margin_px * scale;
  const double share = caution_share_of(overlay, around, width_px, height_px, scale);
  return {
      around.with_column ? column_px * scale : margin, around.title ? title_px * scale : margin,
      width_px - margin,
      height_px - (around.caution.empty() ? margin
                                          : caution_height(overlay, around.caution, share, width_px, scale))};
}

}  // namespace scalpmark::viewer
