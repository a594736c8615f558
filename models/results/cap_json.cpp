#include "models/results/cap_json.h"

#include "models/files/json_numbers.h"

namespace scalpmark::models {

nlohmann::ordered_json cap_json(const geometry::CapToday& today) {
  const geometry::FoundSlip& f = today.found;
  const auto said = [](bool is_said, double value) {
    return is_said ? number(value) : nlohmann::ordered_json(nullptr);
  };
  nlohmann::ordered_json out;
  out["sits"] = today.sits;
  out["slip"] = {{"forward_deg", said(f.forward_said, f.slip.forward_deg)},
                 {"side_deg", said(f.side_said, f.slip.side_deg)},
                 {"turn_deg", said(f.turn_said, f.slip.turn_deg)}};
  out["sd"] = {{"forward_deg", said(f.forward_said, f.sd.forward_deg)},
               {"side_deg", said(f.side_said, f.sd.side_deg)},
               {"turn_deg", said(f.turn_said, f.sd.turn_deg)}};
  out["misfit_mm"] = number(f.worst_mm);
  out["move"] = {{"forward_mm", said(f.forward_said, today.back.forward_mm)},
                 {"right_mm", said(f.side_said, today.back.right_mm)},
                 {"turn_right_deg", said(f.turn_said, today.back.turn_right_deg)}};
  out["pulse"] = point(today.check.as_laid.pulse);
  out["pulse_off_mm"] = number(today.check.pulse_off_mm);
  out["forward_mm"] = number(today.check.forward_mm);
  out["toward_midline_mm"] = number(-today.check.outward_mm);
  out["pulse_sd_mm"] = number(today.pulse_sd_mm);
  return out;
}

}  // namespace scalpmark::models
