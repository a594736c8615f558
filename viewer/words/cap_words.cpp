#include "viewer/words/cap_words.h"

#include <cmath>
#include <vector>

namespace scalpmark::viewer {

using geometry::CapMove;
using geometry::CapToday;
using geometry::FoundSlip;
using geometry::Message;
using geometry::number;

namespace {

/// Closer than this to where it is planned, nobody says where the pulse goes instead.
constexpr double same_place_mm = 0.5;

Message and_of(const std::vector<Message>& parts) {
  Message all;
  for (const Message& part : parts) all = all.empty() ? part : Message::of("%1 and %2", all, part);
  return all;
}

Message forward_move(double mm, const LengthInWords& length) {
  return mm < 0 ? Message::of("Slide the cap %1 back", length(-mm))
                : Message::of("Slide the cap %1 forward", length(mm));
}

Message side_move(double mm, bool first, const LengthInWords& length) {
  if (first)
    return mm < 0 ? Message::of("Slide the cap %1 to the patient's left", length(-mm))
                  : Message::of("Slide the cap %1 to the patient's right", length(mm));
  return mm < 0 ? Message::of("%1 to the patient's left", length(-mm))
                : Message::of("%1 to the patient's right", length(mm));
}

Message turn_move(double deg, bool first) {
  const auto by = number(std::abs(deg), 0);
  if (first)
    return deg < 0 ? Message::of("Turn the cap's arrow %1 degrees to the patient's left", by)
                   : Message::of("Turn the cap's arrow %1 degrees to the patient's right", by);
  return deg < 0 ? Message::of("turn its arrow %1 degrees to the patient's left", by)
                 : Message::of("turn its arrow %1 degrees to the patient's right", by);
}

/// "Slide the cap 0.5 cm back and turn its arrow 4 degrees to the patient's left"
Message moves(const CapToday& today, const LengthInWords& length) {
  const FoundSlip& f = today.found;
  const auto told = [](double deg, double sd) { return std::abs(deg) > 2 * sd; };
  std::vector<Message> all;
  if (told(f.slip.forward_deg, f.sd.forward_deg)) all.push_back(forward_move(today.back.forward_mm, length));
  if (told(f.slip.side_deg, f.sd.side_deg))
    all.push_back(side_move(today.back.right_mm, all.empty(), length));
  if (told(f.slip.turn_deg, f.sd.turn_deg)) all.push_back(turn_move(today.back.turn_right_deg, all.empty()));
  return and_of(all);
}

/// "0.7 cm forward and 0.2 cm toward the midline"
Message where_pulse_goes(const geometry::Check& c, const LengthInWords& length) {
  std::vector<Message> ways;
  if (c.forward_mm > same_place_mm) ways.push_back(Message::of("%1 forward", length(c.forward_mm)));
  if (c.forward_mm < -same_place_mm) ways.push_back(Message::of("%1 backward", length(-c.forward_mm)));
  if (c.outward_mm > same_place_mm)
    ways.push_back(Message::of("%1 away from the midline", length(c.outward_mm)));
  if (c.outward_mm < -same_place_mm)
    ways.push_back(Message::of("%1 toward the midline", length(-c.outward_mm)));
  return and_of(ways);
}

}  // namespace

Message brim_sentence(const geometry::BrimHeights& h, const LengthInWords& length) {
  const auto over = [&](const std::optional<double>& mm) {
    return mm ? Message::verbatim(length(*mm)) : Message::of("0 (it is under the brim)");
  };
  return Message::of(
      "Brim %1 over the nasion, %2 over the left tragus, %3 over the right, %4 over the inion.",
      over(h.nasion_mm), over(h.left_tragus_mm), over(h.right_tragus_mm), over(h.inion_mm));
}

Message cap_sentence(const CapToday& today, const LengthInWords& length) {
  const std::string within = length(today.pulse_sd_mm);
  if (today.sits)
    return Message::of(
        "The cap sits as it should, as far as these tapes can tell: they leave the pulse uncertain by %1.",
        within);
  const Message what = moves(today, length), where = where_pulse_goes(today.check, length);
  if (where.empty())
    return Message::of("%1; as it sits the pulse still goes where it is wanted, give or take %2.", what,
                       within);
  return Message::of("%1; as it sits the pulse goes %2, give or take %3.", what, where, within);
}

Message unsaid_sentence(const FoundSlip& f) {
  std::vector<Message> all;
  if (!f.forward_said)
    all.push_back(Message::of(
        "These heights do not say whether the cap has slid forward or back; measure over nasion or inion."));
  if (!f.side_said)
    all.push_back(
        Message::of("These heights do not say whether the cap has slid to a side; measure over a tragus."));
  if (!f.turn_said)
    all.push_back(Message::of(
        "Heights hardly say whether the cap is turned: measure how far beside the nasion its arrow passes."));
  Message sentence;
  for (const Message& one : all) sentence = sentence.empty() ? one : Message::of("%1 %2", sentence, one);
  return sentence;
}

}  // namespace scalpmark::viewer
