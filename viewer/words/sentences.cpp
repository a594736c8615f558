#include "viewer/words/sentences.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>
#include <algorithm>
#include <string_view>
#include <vector>

namespace scalpmark::viewer {

namespace {

// The kernel and the readers know no Qt and say their sentences in English. Here each stands once more as a
// pattern, longest first, so that it can be found again and said in another language. A test holds the two
// together.
constexpr const char* patterns[] = {
    QT_TRANSLATE_NOOP(
        "Sentences",
        "The habit that would shrink it most: draw the edge mark as a line along the coil's edge, and lay "
        "the whole edge on it, so that the angle is kept (half that error, and %1 on average become %2)."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "The habit that would shrink it most: have a second person feel for the nasion, the inion and both "
        "tragi before the tape is laid (half that error, and %1 on average become %2)."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "The habit that would shrink it most: look at the coil from the front and from the side, and close "
        "the gap on both sides alike (half that error, and %1 on average become %2)."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The vertex does not settle: half of nasion-inion and half of tragus-tragus do not "
                      "meet on this skin; check the four points and the surface at the top of the head."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The skin is rough (%1 mm up and down within a centimetre), as hair is: marks lie on "
                      "the hair, not on the scalp; compare the tapes with those of the head itself."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The habit that would shrink it most: check the cap's brim and arrow against the "
                      "nasion each time it is put on (half that error, and %1 on average become %2)."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The habit that would shrink it most: make the edge mark and lay the coil by the same "
                      "rule (%3) at every visit (half that error, and %1 on average become %2)."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The habit that would shrink it most: use a sharp pencil and lay the coil's edge on "
                      "the middle of its mark (half that error, and %1 on average become %2)."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 is not the size of a head in millimetres, centimetres, metres or inches (its "
                      "largest extent is %2); choose a mesh of a head, or say the unit."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The site mark and the edge mark lie %1 cm apart, but this coil's edge is %2 cm from "
                      "its centre; check that both marks were made for this coil."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The nasion and inion lie %1 mm below the tragi, as if left and right tragus were "
                      "swapped (or nasion and inion); check the four points."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 has %2 triangles and cannot be thinned (its borders alone have too many corners); "
                      "thin it to 150 000 in the program that made it."),
    QT_TRANSLATE_NOOP("Sentences",
                      "No pulse point puts the coil's edge over this mark (the nearest misses it by %1 mm); "
                      "move the mark or choose another marking rule."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 gives its corners in whole numbers, which is not read here; export it without "
                      "compression."),
    QT_TRANSLATE_NOOP("Sentences",
                      "These tapes do not meet on the skin (the best place misses one by %1 mm); read them "
                      "again, and check that they belong to one mark."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The start's edge mark by the %1 rule falls off the head, so no grid can be drawn "
                      "around it; choose another rule, angle or start."),
    QT_TRANSLATE_NOOP("Sentences",
                      "One tape is not enough to find a point again; give two or more of the distances to "
                      "the vertex, the nasion and the two tragi."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 could not be read: it takes more time or memory than a head does; save it anew, or "
                      "thinner, in the program that made it."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 holds colours, complex numbers or another kind of voxel (datatype %2) instead of "
                      "intensities; export it as 16-bit numbers."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The habit that would shrink it most: read every tape twice, to the millimetre (half "
                      "that error, and %1 on average become %2)."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 has too many edges where more than two triangles meet to be repaired here; repair "
                      "the mesh in the program that made it."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The coil cannot be laid with its edge over the edge mark and its centre line over the "
                      "site mark; make both marks new."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The line from inion to nasion runs %1 degrees to the line between the tragi instead "
                      "of about 90; check the four points."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The treatment's edge mark falls off the head, so nobody can lay the coil on it; "
                      "choose another marking rule or site."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 has %2 triangles and cannot be thinned (the skin would move by %3 mm); thin it to "
                      "150 000 in the program that made it."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 is not the size of a head (%2 cm from corner to corner, where %3 to %4 would do); "
                      "check the unit or choose another mesh."),
    QT_TRANSLATE_NOOP("Sentences",
                      "It meets the cortex %1 from where it would with the coil held flat (on the template; "
                      "a person's own brain differs)."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 is a surface with one side only, on which outside cannot be told; repair the mesh "
                      "in the program that made it."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The edge mark of %1 by the %2 rule falls off the head (over the face or past the "
                      "skin's border), so it is left out."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1: %2 must be a position of the 10-20, 10-10 or 10-5 system such as F3, but is %3; "
                      "correct it and read the %4 again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The brain under the skin is left out, because %1 is missing; install the Debian "
                      "package mricron-data to see it."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The %1 tape (%2) and the %3 tape (%4) disagree: their proportion is more than 30 % "
                      "off a head's. Measure both again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 could not be read: it is damaged in a way that stops the reader; save it anew in "
                      "the program that made it."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 could not be read: nothing came of it for %2 seconds; save it anew, or thinner, in "
                      "the program that made it."),
    QT_TRANSLATE_NOOP("Sentences",
                      "treatment.label is \"%1\", which is not a position of the 10-20, 10-10 or 10-5 "
                      "system; write one such as F3."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The skin has no unbroken line for a tape between two of the points; the surface ends "
                      "or has a hole there."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The treatment's edge mark falls off the head, so nothing can be laid on it; choose "
                      "another rule or site."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The skin is flat where a tape line should start, so the line has no direction; move "
                      "the point a little."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The head of the case has no nasion, inion and tragi yet, so the case cannot be kept; "
                      "place them first."),
    QT_TRANSLATE_NOOP("Sentences",
                      "This treatment site is a landmark, not a length from the hotspot, so no such tape can "
                      "be read wrongly."),
    QT_TRANSLATE_NOOP("Sentences",
                      "No scaling of the head gives these tapes together: the %1 (%2) and the %3 (%4) "
                      "disagree. Measure both again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 shows no head that stands out from the air (%2); choose a scan of the whole head "
                      "with air around it."),
    QT_TRANSLATE_NOOP("Sentences",
                      "With errors this large more than half of the placements fall off the head; make the "
                      "errors smaller."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The part of the program that reads heads, %1, does not start (%2); build or install "
                      "the program again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 says nowhere usable where its voxels lie (no sform or qform); export it again with "
                      "its position."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "No head could be made out in this skin, so its four points cannot be guessed; place them by hand."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The treatment site, %1 cm forward of the hotspot, falls on the face; shorten "
                      "treatment.distance_mm."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "The two points lie on separate pieces of the skin, so no path joins them; check the head's mesh."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "The walk's direction points more than 60 degrees away from the skin; choose one along the skin."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "The template brain shares only %1 positions with this head, too few to bring it under the skin."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "These tapes do not meet on the skin; read them again, and check that they belong to one mark."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "The %1 tape was entered as %2 cm, but the head measures %3 cm; check the tape and the four points."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The straight line from %1 to %2 is %3 mm; on a head it is %4 to %5 mm. Check both "
                      "points and the unit."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "A number to be written is not finite, so nothing was written; check the head and the case."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "The template's brain was pushed in by up to %1 mm over %2 % of it, to stay %3 mm under the skin."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "%1 has %2 triangles and cannot be thinned (%3); thin it to 150 000 in the program that made it."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "%1: %2 belongs to the rule forward, but the rule is landmark; correct it and read the %3 again."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "%1: %2 belongs to the rule landmark, but the rule is forward; correct it and read the %3 again."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "%1: %2 does not go with an mri head, whose file says its own; correct it and read the %3 again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "Took the numbers in the file for centimetres, in which it is %1 cm at its largest "
                      "extent; a head of an adult's size was made out so, in %2 less well."),
    QT_TRANSLATE_NOOP("Sentences",
                      "Took the numbers in the file for centimetres, in which it is %1 cm at its largest "
                      "extent; a head of an adult's size was made out so, in %2 none."),
    QT_TRANSLATE_NOOP("Sentences",
                      "Took the numbers in the file for centimetres, in which it is %1 cm at its largest "
                      "extent; %2 would fit too, so compare a tape's length."),
    QT_TRANSLATE_NOOP("Sentences",
                      "Took the numbers in the file for millimetres, in which it is %1 cm at its largest "
                      "extent; a head of an adult's size was made out so, in %2 less well."),
    QT_TRANSLATE_NOOP("Sentences",
                      "Took the numbers in the file for millimetres, in which it is %1 cm at its largest "
                      "extent; a head of an adult's size was made out so, in %2 none."),
    QT_TRANSLATE_NOOP("Sentences",
                      "Took the numbers in the file for millimetres, in which it is %1 cm at its largest "
                      "extent; %2 would fit too, so compare a tape's length."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "%1: %2 does not go with the generic head, which has its own; correct it and read the %3 again."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "Both tragi lie on the same side of the line from inion to nasion; check the four points."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "Took the numbers in the file for centimetres, in which it is %1 cm at its largest extent."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "Took the numbers in the file for millimetres, in which it is %1 cm at its largest extent."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "A place to be found on the skin has a coordinate that is not a number; give all three."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "A text to be written is not UTF-8, so nothing was written; rename it or type it again."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "The surface has neighbouring triangles that face opposite ways; repair the mesh first."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "The template's head in %1 cannot be measured (%2); install the package mricron-data again."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "%1 has too rough a surface to be drawn with %2 triangles; smooth or resample it to 1 mm."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "%1 is not JSON: what stands at %2 does not belong there; correct it and read the %3 again."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "A cap of %1 would be pressed in by %2; enter its thickness as the lift for cap and hair."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The search start falls on the face; shorten search.lateral_mm or search.anterior_mm."),
    QT_TRANSLATE_NOOP("Sentences",
                      "These tapes meet at two places on the head; add a third distance, or say which side."),
    QT_TRANSLATE_NOOP("Sentences",
                      "Took the numbers in the file for inches, in which it is %1 cm at its largest extent; "
                      "a head of an adult's size was made out so, in %2 less well."),
    QT_TRANSLATE_NOOP("Sentences",
                      "Took the numbers in the file for inches, in which it is %1 cm at its largest extent; "
                      "a head of an adult's size was made out so, in %2 none."),
    QT_TRANSLATE_NOOP("Sentences",
                      "Took the numbers in the file for inches, in which it is %1 cm at its largest extent; "
                      "%2 would fit too, so compare a tape's length."),
    QT_TRANSLATE_NOOP("Sentences",
                      "Took the numbers in the file for metres, in which it is %1 cm at its largest extent; "
                      "a head of an adult's size was made out so, in %2 less well."),
    QT_TRANSLATE_NOOP("Sentences",
                      "Took the numbers in the file for metres, in which it is %1 cm at its largest extent; "
                      "a head of an adult's size was made out so, in %2 none."),
    QT_TRANSLATE_NOOP("Sentences",
                      "Took the numbers in the file for metres, in which it is %1 cm at its largest extent; "
                      "%2 would fit too, so compare a tape's length."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The system gave no pipe to read a file through; close other programs and try again."),
    QT_TRANSLATE_NOOP(
        "Sentences", "%1 is damaged: a number in its description is missing or not usable; export it again."),
    QT_TRANSLATE_NOOP(
        "Sentences", "%1 is damaged: its description points at a part that does not exist; export it again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 holds a voxel that is no region's number; install the package mricron-data again."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "%1: %2 must be three numbers [x, y, z] in mm, but is %3; correct it and read the %4 again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "Took the numbers in the file for inches, in which it is %1 cm at its largest extent."),
    QT_TRANSLATE_NOOP("Sentences",
                      "Took the numbers in the file for metres, in which it is %1 cm at its largest extent."),
    QT_TRANSLATE_NOOP("Sentences",
                      "A tape needs a third point beside its two ends; the three points lie in one line."),
    QT_TRANSLATE_NOOP("Sentences",
                      "Held so far over, the coil's axis passes the head; enter a smaller roll or pitch."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The surface has an edge shared by more than two triangles; repair the mesh first."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 cannot be written: the file would be larger than allowed; choose another place."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The template's brain does not fit under this head's skin; check the four points."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The walk's direction stands upright on the skin here; choose one along the skin."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 cannot be opened: the file would be larger than allowed; choose another place."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 cannot be written: too many files are open; close some programs and try again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 could not be made into a skin (%2); repair the mesh in the program that made it."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "%1: %2 must be two numbers from %3 to %4 (mm), but is %5; correct it and read the %6 again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The coil rests on its %1, away from its centre; its centre is %2 clear of the skin."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 cannot be opened: too many files are open; close some programs and try again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 is not a mesh file read here; choose an .obj, .ply, .stl, .gltf or .glb file."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "%1: %2 must be at most %3 characters long, but has %4; correct it and read the %5 again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "No skin was found above the tragi; the surface must cover the top of the head."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The %1 hits %2, which holds the coil %3 further off; turn the coil or move the site."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 cannot be read: the file would be larger than allowed; choose another place."),
    QT_TRANSLATE_NOOP(
        "Sentences", "%1 is not the size of a head in %2 (its largest extent would be %3 cm); %4 would fit."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "%1: %2 must be a whole number from %3 to %4, but is %5; correct it and read the %6 again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The coil rests on its wings, first on its %1; its centre is %2 clear of the skin."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 cannot be read: too many files are open; close some programs and try again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 cannot be written: that is not allowed; check who may read and write there."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 is larger than %2 bytes, which is the most that is read; choose another file."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 points at %2, which is not a .bin file beside it; export it as one .glb file."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1: %2 must be a list of points [x, y], but is %3; correct it and read the %4 again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "A smooth map needs at least %1 pairs of points, the same number on both sides."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 cannot be opened: that is not allowed; check who may read and write there."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1: version must be %2, but is %3; use the program that wrote it, or a newer one."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The limits of the check must be more than 0 mm and 0 degrees; correct them."),
    QT_TRANSLATE_NOOP("Sentences",
                      "Thinned the skin from %1 to %2 triangles; no corner was moved by more than %3 mm."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 holds a kind of voxel that is not read here; export it as 16-bit numbers."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "%1: %2 must be a number from %3 to %4 (%5), but is %6; correct it and read the %7 again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1: the key %2 is given twice in the same group; keep one and read the %3 again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The %1 is %2 mm away from the skin (at most %3); place it on the head's surface."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The head %1 has no nasion, inion and tragi yet; place the four points first."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 is damaged: a part of it is longer than what it lies in; export it again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 cannot be read: that is not allowed; check who may read and write there."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 ends before the last voxel its header promises; copy or export it again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 has a coordinate that is not a usable number (vertex %2); export it again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 is damaged: its header has a property of no known type; export it again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 is damaged: its header has an element without a number; export it again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1: %2 must be a coil that ships (%3), but is %4; correct it and read the %5 again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The coil can be turned by at most 90 degrees in this lesson; choose less."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The points of a smooth map lie in one plane; they must go round the head."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 is a single picture, not a volume; choose a 3-D scan of the whole head."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 is damaged: it ends before all its elements have come; export it again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 is not JSON: it holds zero bytes, as no text does; choose another file."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 is not JSON: the text at %2 is not UTF-8; correct it and read the %3 again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The skin ends between this edge mark and the pulse point; move the mark."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 cannot be written: a part of its path is not a folder; check the name."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1: %2 must be the name of a file, but is %3; correct it and read the %4 again."),
    QT_TRANSLATE_NOOP("Sentences", "From so wrong a vertex the search start falls on the face; choose less."),
    QT_TRANSLATE_NOOP("Sentences", "The walk got stuck among triangles without area; repair the mesh first."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 cannot be opened: a part of its path is not a folder; check the name."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 is damaged: a list is shorter than it says in line %2; export it again."),
    QT_TRANSLATE_NOOP("Sentences", "The number of placements to try must be from 0 to 1000000; correct it."),
    QT_TRANSLATE_NOOP("Sentences", "%1 cannot be written: its links lead in a circle; choose another place."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 is not JSON: it ends too early, at %2; correct it and read the %3 again."),
    QT_TRANSLATE_NOOP("Sentences", "Rolled by %1 degrees, its right side down, it would rest on both wings."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is damaged: a part of its mesh has too few corners; export it again."),
    QT_TRANSLATE_NOOP("Sentences", "%1 cannot be opened: its links lead in a circle; choose another place."),
    QT_TRANSLATE_NOOP("Sentences", "%1 cannot be read: a part of its path is not a folder; check the name."),
    QT_TRANSLATE_NOOP("Sentences", "%1 cannot be written: the disk can only be read; choose another place."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 is damaged: a list's length is no number in line %2; export it again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1: %2 is not a key known here (known: %3); remove it and read the %4 again."),
    QT_TRANSLATE_NOOP("Sentences", "Rolled by %1 degrees, its left side down, it would rest on both wings."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The %1 and the %2 are %3 mm apart; place each at its own spot on the head."),
    QT_TRANSLATE_NOOP("Sentences", "The default protocol is missing from this program; install it again."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is damaged: it does not begin as a .glb file does; export it again."),
    QT_TRANSLATE_NOOP("Sentences", "%1 cannot be opened: the disk can only be read; choose another place."),
    QT_TRANSLATE_NOOP("Sentences", "%1 has a triangle with a corner that does not exist; export it again."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is damaged: its header has a property of nothing; export it again."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is too short or too damaged to be a NIfTI volume; export it again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1: %2 must be text in quotes, but is %3; correct it and read the %4 again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1: %2 must have at least three points; correct it and read the %3 again."),
    QT_TRANSLATE_NOOP("Sentences", "Parted the skin at %1 points where it touched itself in a point only."),
    QT_TRANSLATE_NOOP("Sentences", "%1 cannot be read: its links lead in a circle; choose another place."),
    QT_TRANSLATE_NOOP("Sentences", "%1 holds no triangle with an area; choose a mesh of the head's skin."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is %2 voxels long on one side, more than 1024; resample it to 1 mm."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is a NIfTI-2 file, which is not read here; convert it to NIfTI-1."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 is nested deeper than %2 levels, which no %3 is; choose another file."),
    QT_TRANSLATE_NOOP("Sentences", "%1 keeps header and image in two files; convert it to one .nii file."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1: %2 must not cross or touch itself; correct it and read the %3 again."),
    QT_TRANSLATE_NOOP("Sentences", "Parted the skin at %1 point where it touched itself in a point only."),
    QT_TRANSLATE_NOOP("Sentences", "The vertex can be marked at most %1 off in this lesson; choose less."),
    QT_TRANSLATE_NOOP("Sentences", "%1 cannot be read: the disk can only be read; choose another place."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is damaged: a list's length is no whole number; export it again."),
    QT_TRANSLATE_NOOP("Sentences", "Roll and pitch must each be from -30 to 30 degrees; correct them."),
    QT_TRANSLATE_NOOP("Sentences", "The head of the case is none of the kinds known; choose it again."),
    QT_TRANSLATE_NOOP("Sentences", "%1 has a damaged header (where the voxels start); export it again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1: %2 must be a group { }, but is %3; correct it and read the %4 again."),
    QT_TRANSLATE_NOOP("Sentences", "The file's sform cannot be used; its qform gave the world frame."),
    QT_TRANSLATE_NOOP("Sentences", "This coil has no casing, so it rests on nothing; choose another."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is damaged: its description is not valid glTF; export it again."),
    QT_TRANSLATE_NOOP("Sentences", "%1 has more than %2 triangles; thin it in the program that made it."),
    QT_TRANSLATE_NOOP("Sentences", "%1: %2 must be a list [ ], but is %3; correct it and read the %4 again."),
    QT_TRANSLATE_NOOP("Sentences", "%1: %2 must be more than bottom_mm; correct it and read the %3 again."),
    QT_TRANSLATE_NOOP("Sentences", "%1: %2 must list at least one part; correct it and read the %3 again."),
    QT_TRANSLATE_NOOP("Sentences", "%1: the number %2 at %3 is too large; correct it and read the %4 again."),
    QT_TRANSLATE_NOOP("Sentences", "The coil \"%1\" does not ship with this program; choose one of: %2."),
    QT_TRANSLATE_NOOP("Sentences", "The coil rests on both wings; its centre is %1 clear of the skin."),
    QT_TRANSLATE_NOOP("Sentences", "The length of a walk must be a number from 0 mm to a kilometre."),
    QT_TRANSLATE_NOOP("Sentences", "The search grid reaches past the skin's border; move the start."),
    QT_TRANSLATE_NOOP("Sentences", "The steps of the gap map must be from 1 to 10 mm; correct them."),
    QT_TRANSLATE_NOOP("Sentences", "The steps of the gap map must be from 1 to 20 mm; correct them."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is damaged: a part of it is of no known kind; export it again."),
    QT_TRANSLATE_NOOP("Sentences", "%1 cannot be written: the disk is full; make room and try again."),
    QT_TRANSLATE_NOOP("Sentences", "%1 has a damaged header (number of dimensions); export it again."),
    QT_TRANSLATE_NOOP("Sentences", "%1 points at %2, which cannot be read; export it as one .glb file."),
    QT_TRANSLATE_NOOP("Sentences", "%1: %2 must be more than inner_mm; correct it and read the %3 again."),
    QT_TRANSLATE_NOOP("Sentences", "%1: %2 must run counter-clockwise; correct it and read the %3 again."),
    QT_TRANSLATE_NOOP("Sentences", "%1: version is missing and must be %2; add it and read the %3 again."),
    QT_TRANSLATE_NOOP("Sentences", "Two points of a smooth map lie in one place; place them apart."),
    QT_TRANSLATE_NOOP("Sentences", "With the coil %1, its axis meets the skin %2 from the pulse point."),
    QT_TRANSLATE_NOOP("Sentences", "%1 cannot be opened: the disk is full; make room and try again."),
    QT_TRANSLATE_NOOP("Sentences", "A setting to be written is none of its choices; set it again."),
    QT_TRANSLATE_NOOP("Sentences", "The surface has a triangle with a corner that does not exist."),
    QT_TRANSLATE_NOOP("Sentences", "%1 cannot be written: there is no such folder; check the name."),
    QT_TRANSLATE_NOOP("Sentences", "Parted the skin at %1 where it touched itself in a point only."),
    QT_TRANSLATE_NOOP("Sentences", "The direction of a walk must be three numbers, not all zero."),
    QT_TRANSLATE_NOOP("Sentences", "The position %1 lies on the face of this head; choose another."),
    QT_TRANSLATE_NOOP("Sentences", "%1 cannot be opened: there is no such folder; check the name."),
    QT_TRANSLATE_NOOP("Sentences", "%1 cannot be read: the disk is full; make room and try again."),
    QT_TRANSLATE_NOOP("Sentences", "The %1 has a coordinate that is not a number; enter it again."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is damaged: a value is missing in line %2; export it again."),
    QT_TRANSLATE_NOOP("Sentences", "%1 names no regions; install the package it came with again."),
    QT_TRANSLATE_NOOP("Sentences", "%1 cannot be read: there is no such folder; check the name."),
    QT_TRANSLATE_NOOP("Sentences", "%1 holds no region; install the package mricron-data again."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 is damaged: its header gives corners or triangles twice; export it again."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is damaged: its header names no format; export it again."),
    QT_TRANSLATE_NOOP("Sentences", "The skin ends before the tape does; shorten the distance."),
    QT_TRANSLATE_NOOP("Sentences", "%1 holds no brain; install the package mricron-data again."),
    QT_TRANSLATE_NOOP("Sentences", "%1format is missing and must be \"%2\"; choose another file."),
    QT_TRANSLATE_NOOP("Sentences", "A point of a smooth map is not a number; place it again."),
    QT_TRANSLATE_NOOP("Sentences", "The moved surface has a coordinate that is not a number."),
    QT_TRANSLATE_NOOP("Sentences", "The tape from the %1 must be a length above 0; correct it."),
    QT_TRANSLATE_NOOP("Sentences", "%1 gives no usable voxel size (pixdim %2); export it again."),
    QT_TRANSLATE_NOOP("Sentences", "No error is entered, so no habit would change anything."),
    QT_TRANSLATE_NOOP("Sentences",
                      "%1 is packed (%2), which is not read here; export it without compression."),
    QT_TRANSLATE_NOOP("Sentences", "%1 holds lines that are closed in a loop; export the surface alone."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is not glTF 2; export it as glTF 2, or as a .ply file."),
    QT_TRANSLATE_NOOP("Sentences", "%1 could not be read as a NIfTI volume; export it again."),
    QT_TRANSLATE_NOOP("Sentences", "%1 holds no intensity that is a number; export it again."),
    QT_TRANSLATE_NOOP("Sentences", "%1 holds no triangles; choose a mesh of the head's skin."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is not a NIfTI volume; choose a .nii or .nii.gz file."),
    QT_TRANSLATE_NOOP("Sentences", "%1it should be a group { } but is %2; choose another file."),
    QT_TRANSLATE_NOOP("Sentences", "A cap's thickness must be from 0 to 30 mm; correct it."),
    QT_TRANSLATE_NOOP("Sentences", "The %1 tape reads %2; it must be from %3 to %4. Measure again."),
    QT_TRANSLATE_NOOP("Sentences", "The surface has a triangle that uses one corner twice."),
    QT_TRANSLATE_NOOP("Sentences", "%1 cannot be written: the name is too long; shorten it."),
    QT_TRANSLATE_NOOP("Sentences", "%1 must be from %2 to %3 %4, but is not a number; correct it."),
    QT_TRANSLATE_NOOP("Sentences", "%1: %2 must be %3, but is %4; correct it and read the %5 again."),
    QT_TRANSLATE_NOOP("Sentences", "Left out %1 triangles at edges where more than two met."),
    QT_TRANSLATE_NOOP("Sentences", "%1 cannot be opened: the name is too long; shorten it."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is damaged: its header has no end; export it again."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is not a plain file; choose a .nii or .nii.gz file."),
    QT_TRANSLATE_NOOP("Sentences", "Left out %1 triangle at edges where more than two met."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is flat (only %2 mm thick); choose a mesh of a head."),
    QT_TRANSLATE_NOOP("Sentences", "The skin ends before the wrong vertex; choose less."),
    QT_TRANSLATE_NOOP("Sentences", "%1 cannot be read: the name is too long; shorten it."),
    QT_TRANSLATE_NOOP("Sentences", "%1format must be \"%2\", but is %3; choose another file."),
    QT_TRANSLATE_NOOP("Sentences", "The surface has a coordinate that is not a number."),
    QT_TRANSLATE_NOOP("Sentences", "%1 could not be read as a mesh (%2); export it again."),
    QT_TRANSLATE_NOOP("Sentences", "A moved surface must keep its number of vertices."),
    QT_TRANSLATE_NOOP("Sentences", "%1 shows no skin; choose a scan of the whole head."),
    QT_TRANSLATE_NOOP("Sentences", "Kept the largest of %1 pieces (%2 % of the surface)."),
    QT_TRANSLATE_NOOP("Sentences", "%1 could not be read as a mesh; export it again."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is a folder; choose the name of a file in it."),
    QT_TRANSLATE_NOOP("Sentences", "Under the %1 the gap is %2 to %3, %4 under its middle."),
    QT_TRANSLATE_NOOP("Sentences", "\"%1\" is not the name of a file; choose a name."),
    QT_TRANSLATE_NOOP("Sentences", "%1 gave a skin with holes; choose another scan."),
    QT_TRANSLATE_NOOP("Sentences", "%1 gave no usable skin (%2); choose another scan."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is a folder; choose a .nii or .nii.gz file."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is larger than 512 MB; resample it to 1 mm."),
    QT_TRANSLATE_NOOP("Sentences", "The skin has %1 holes, the largest %2 mm around."),
    QT_TRANSLATE_NOOP("Sentences", "%1 claims a side of %2 voxels; export it again."),
    QT_TRANSLATE_NOOP("Sentences", "A tape's length must be a number from 0 up."),
    QT_TRANSLATE_NOOP("Sentences", "Left out %1 at edges where more than two met."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is not a plain file; choose another name."),
    QT_TRANSLATE_NOOP("Sentences", "%1: %2 is missing; add it and read the %3 again."),
    QT_TRANSLATE_NOOP("Sentences", "Left out %1 triangles that were there twice."),
    QT_TRANSLATE_NOOP("Sentences", "%1 cannot be opened; check who may read it."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is not a plain file; choose another one."),
    QT_TRANSLATE_NOOP("Sentences", "%1 must be from %2 to %3 %4, but is %5; correct it."),
    QT_TRANSLATE_NOOP("Sentences", "Left out %1 triangle that was there twice."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is a folder; choose a mesh file in it."),
    QT_TRANSLATE_NOOP("Sentences", "Took the first of %1 volumes in the file."),
    QT_TRANSLATE_NOOP("Sentences", "errors.%1 must be from %2 to %3 %4; correct it."),
    QT_TRANSLATE_NOOP("Sentences", "Closed %1 small holes, up to %2 mm around."),
    QT_TRANSLATE_NOOP("Sentences", "Closed a small hole, up to %1 mm around."),
    QT_TRANSLATE_NOOP("Sentences", "Took %1 voxels without a number for air."),
    QT_TRANSLATE_NOOP("Sentences", "Cut the shoulders off below the neck."),
    QT_TRANSLATE_NOOP("Sentences", "Turned %1 triangles that faced inward."),
    QT_TRANSLATE_NOOP("Sentences", "Turned %1 triangle that faced inward."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is a folder; choose a file in it."),
    QT_TRANSLATE_NOOP("Sentences", "%1 was read only in part; try again."),
    QT_TRANSLATE_NOOP("Sentences", "The skin has one hole, %1 mm around."),
    QT_TRANSLATE_NOOP("Sentences", "Left out %1 triangles without area."),
    QT_TRANSLATE_NOOP("Sentences", "%1 does not exist; check the name."),
    QT_TRANSLATE_NOOP("Sentences", "Left out %1 triangle without area."),
    QT_TRANSLATE_NOOP("Sentences", "%1 %2; export it as one .glb file."),
    QT_TRANSLATE_NOOP("Sentences", "The coil rests on its centre."),
    QT_TRANSLATE_NOOP("Sentences", "The surface has no triangles."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is empty; export it again."),
    QT_TRANSLATE_NOOP("Sentences", "Under the %1 the gap is %2 to %3."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is empty; choose a %2 file."),
    QT_TRANSLATE_NOOP("Sentences", "The %1 hits %2; mind it."),
    QT_TRANSLATE_NOOP("Sentences", "scan %1"),
    QT_TRANSLATE_NOOP("Sentences", "MRI %1")};

/// What stands alone, or in place of a %1, and is a word of ours.
constexpr const char* words[] = {QT_TRANSLATE_NOOP("Sentences", "nasion"),
                                 QT_TRANSLATE_NOOP("Sentences", "inion"),
                                 QT_TRANSLATE_NOOP("Sentences", "left tragus"),
                                 QT_TRANSLATE_NOOP("Sentences", "right tragus"),
                                 QT_TRANSLATE_NOOP("Sentences", "vertex"),
                                 QT_TRANSLATE_NOOP("Sentences", "nasion-inion"),
                                 QT_TRANSLATE_NOOP("Sentences", "tragus-tragus"),
                                 QT_TRANSLATE_NOOP("Sentences", "circumference"),
                                 QT_TRANSLATE_NOOP("Sentences", "tape"),
                                 QT_TRANSLATE_NOOP("Sentences", "drop"),
                                 QT_TRANSLATE_NOOP("Sentences", "nearest"),
                                 QT_TRANSLATE_NOOP("Sentences", "the start"),
                                 QT_TRANSLATE_NOOP("Sentences", "the treatment site"),
                                 QT_TRANSLATE_NOOP("Sentences", "left wing"),
                                 QT_TRANSLATE_NOOP("Sentences", "right wing"),
                                 QT_TRANSLATE_NOOP("Sentences", "coil"),
                                 QT_TRANSLATE_NOOP("Sentences", "casing"),
                                 QT_TRANSLATE_NOOP("Sentences", "bridge"),
                                 QT_TRANSLATE_NOOP("Sentences", "handle"),
                                 QT_TRANSLATE_NOOP("Sentences", "the scalp"),
                                 QT_TRANSLATE_NOOP("Sentences", "the left ear"),
                                 QT_TRANSLATE_NOOP("Sentences", "the right ear"),
                                 QT_TRANSLATE_NOOP("Sentences", "the brow or face"),
                                 QT_TRANSLATE_NOOP("Sentences", "case"),
                                 QT_TRANSLATE_NOOP("Sentences", "millimetres"),
                                 QT_TRANSLATE_NOOP("Sentences", "centimetres"),
                                 QT_TRANSLATE_NOOP("Sentences", "metres"),
                                 QT_TRANSLATE_NOOP("Sentences", "inches"),
                                 QT_TRANSLATE_NOOP("Sentences", "no air at the edges of the volume"),
                                 QT_TRANSLATE_NOOP("Sentences", "nothing is brighter than the air"),
                                 QT_TRANSLATE_NOOP("Sentences", "hardly any air around it"),
                                 QT_TRANSLATE_NOOP("Sentences", "every voxel is alike"),
                                 QT_TRANSLATE_NOOP("Sentences", "generic head, as built in"),
                                 QT_TRANSLATE_NOOP("Sentences", "generic head, scaled to the tapes")};

struct Pattern {
  const char* text;
  QRegularExpression shape;
  std::vector<int> numbers;  ///< which % each group stands for
};

Pattern pattern_of(const char* text) {
  const QString whole = QString::fromUtf8(text);
  static const QRegularExpression number("%([1-9])");
  QString shape("^");
  std::vector<int> numbers;
  int at = 0;
  for (auto found = number.globalMatch(whole); found.hasNext();) {
    const auto match = found.next();
    shape += QRegularExpression::escape(whole.mid(at, match.capturedStart() - at)) + "(.+?)";
    numbers.push_back(match.captured(1).toInt());
    at = match.capturedEnd();
  }
  shape += QRegularExpression::escape(whole.mid(at)) + "$";
  return {text, QRegularExpression(shape, QRegularExpression::DotMatchesEverythingOption), numbers};
}

const std::vector<Pattern>& all_patterns() {
  static const std::vector<Pattern> all = [] {
    std::vector<Pattern> made;
    for (const char* text : patterns) made.push_back(pattern_of(text));
    return made;
  }();
  return all;
}

}  // namespace

QString translated(const std::string& said_in_english) {
  QString text = QString::fromStdString(said_in_english);
  for (const char* word : words)
    if (said_in_english == word) return QCoreApplication::translate("Sentences", word);
  for (const Pattern& pattern : all_patterns()) {
    const auto match = pattern.shape.match(text);
    if (!match.hasMatch()) continue;
    const QString said = QCoreApplication::translate("Sentences", pattern.text);
    if (said == QString::fromUtf8(pattern.text)) return text;  // nobody has translated it
    QString filled;
    // Piece by piece, so that a part's own signs are none of ours.
    for (int i = 0; i < said.size(); ++i) {
      const int number = said[i] == '%' && i + 1 < said.size() ? said[i + 1].digitValue() : -1;
      const auto group = std::find(pattern.numbers.begin(), pattern.numbers.end(), number);
      if (number < 1 || group == pattern.numbers.end()) {
        filled += said[i];
        continue;
      }
      // A part may be a word of ours, or another sentence: why a file could not be made into a skin.
      const auto which = 1 + static_cast<int>(group - pattern.numbers.begin());
      filled += translated(match.captured(which).toStdString());
      ++i;
    }
    return filled;
  }
  return text;
}

}  // namespace scalpmark::viewer
