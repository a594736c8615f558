<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1">
<context>
    <name>Cautions</name>
    <message>
        <source>Training and illustration only; not a navigation or treatment device. Follow the device&apos;s instructions, local codes and the licensed clinician.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&lt;p&gt;&lt;b&gt;For training and illustration only.&lt;/b&gt; Scalpmark is not a navigation or treatment device and is not for treatment decisions.&lt;/p&gt;&lt;p&gt;A licensed prescriber decides site, threshold and dose; the device&apos;s instructions and local codes come first.&lt;/p&gt;&lt;p&gt;Ask before any pulse about:&lt;/p&gt;&lt;ul&gt;&lt;li&gt;metal or implants in or near the head&lt;/li&gt;&lt;li&gt;pacemakers and stimulators&lt;/li&gt;&lt;li&gt;seizures, and drugs that make them more likely&lt;/li&gt;&lt;li&gt;pregnancy&lt;/li&gt;&lt;/ul&gt;&lt;p&gt;Ear protection for patient and staff. Know what to do in a seizure.&lt;/p&gt;&lt;p&gt;A cap and marks without tracking put the pulse about %1 off on average; a tape reads to %2.&lt;/p&gt;</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Coils</name>
    <message>
        <source>Angled two-wing coil, 150 degrees between the wings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An angled coil may rest on its wings with its centre clear of the skin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figure-of-eight coil, 70 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figure-of-eight coil, 90 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round coil, 100 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under a round coil the field is strongest in a ring under its windings, not under its centre.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Dialogs</name>
    <message>
        <source>Unsaved changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The case has changes that are not saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discard the changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep working</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved work found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program ended unexpectedly on %1 and kept this case: “%2”. Continue with it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Continue with it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discard it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before you start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About Scalpmark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&lt;h3&gt;Scalpmark %1&lt;/h3&gt;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 to 6 on the stage, Alt+1 to Alt+6 anywhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moves it over the skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left, Right; Ctrl and wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turn the coil by 1° (with Shift 5°)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl and arrows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click a spot of the grid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lays the coil on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter; Ctrl and arrows, placing points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Esc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>puts the coil back, takes an entry back, leaves Explain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag beside the coil; Alt and arrows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turn the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right drag; Shift and drag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shift the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wheel; + and -</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zoom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up, Down in a field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a little more, a little less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl and a step&apos;s heading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opens it and leaves the others open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+T, Ctrl+H, Ctrl+B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lay the coil on the treatment site, the hotspot, the search start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Z, Ctrl+Shift+Z</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>undo, redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space; Page Down, Page Up in Teach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>play or stop the lesson; next step, step before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+G</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shows the gap under the coil, or leaves it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>looks through the skin at the template&apos;s brain, and back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&lt;p&gt;Built with Qt, VTK, Eigen, Assimp, OpenMesh and nlohmann-json, each under its own licence; on Debian see /usr/share/doc.&lt;/p&gt;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed on disk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was changed by somebody else, or in another window, since it was read here. Both versions can stay.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save mine under another name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save mine here, put the other beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is there already and holds something else. Replace it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Alt+A, Ctrl+Alt+B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chooses one of several places that fit a mark&apos;s tapes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front, left, right, back, above, straight down on the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+I</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shows the induced field in a round model head, or leaves it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0, 1, 2, 3 in Pulses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up, Down; Left, Right in Pulses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backspace in Pulses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>takes the last pulse back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note the answer to a pulse: none, thumb, index finger, other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>output by a step (with Shift a fine one); previous spot, next spot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+E, Ctrl+Shift+P, Ctrl+Shift+C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save a sheet, save a picture, copy the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F11</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>full screen, and back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A person&apos;s face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This head is a scan, and the file will show the person&apos;s face to whoever gets it. A head for a 3D printer that is cut flat above the brow has none. Write the file with the face?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it with the face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not write it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>move the coil by %1 (with Shift %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sets the point in the middle of the picture; moves it by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F, T, P, L, X, C in Practise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take the finger, the tape, the pencil for a point, a line or a cross, the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl and arrows; Space in Practise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>move the hand by 1 mm (with Shift 5 mm); set the tool down there, and lift it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>H, O, Delete in Practise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hold the tape where its end is, close it around the head, take tape or coil off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+W, Ctrl+Shift+E, Ctrl+Shift+T</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save a page for a browser, export the head, save strips of paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved result</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done in this exercise is not saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discard the result</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Lengths</name>
    <message>
        <source>cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” must be a number such as %2; this is not one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” must be from %2 to %3 %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is it %1?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” must be a whole number of degrees, such as 45.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” must be from %2 to %3 degrees.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Message</name>
    <message>
        <source>The template brain shares only %1 positions with this head, too few to bring it under the skin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template&apos;s brain does not fit under this head&apos;s skin; check the four points.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A smooth map needs at least %1 pairs of points, the same number on both sides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A point of a smooth map is not a number; place it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The points of a smooth map lie in one plane; they must go round the head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two points of a smooth map lie in one place; place them apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This coil has no casing, so it rests on nothing; choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cap&apos;s thickness must be from 0 to 30 mm; correct it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The steps of the gap map must be from 1 to 20 mm; correct them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The steps of the gap map must be from 1 to 10 mm; correct them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil cannot be laid with its edge over the edge mark and its centre line over the site mark; make both marks new.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tape from the %1 must be a length above 0; correct it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vertex</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nasion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left tragus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right tragus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One tape is not enough to find a point again; give two or more of the distances to the vertex, the nasion and the two tragi.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These tapes do not meet on the skin; read them again, and check that they belong to one mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These tapes do not meet on the skin (the best place misses one by %1 mm); read them again, and check that they belong to one mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>errors.%1 must be from %2 to %3 %4; correct it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>percent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The treatment&apos;s edge mark falls off the head, so nobody can lay the coil on it; choose another marking rule or site.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The number of placements to try must be from 0 to 1000000; correct it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The treatment&apos;s edge mark falls off the head, so nothing can be laid on it; choose another rule or site.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The vertex can be marked at most %1 cm off in this lesson; choose less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The skin ends before the wrong vertex; choose less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From so wrong a vertex the search start falls on the face; choose less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This treatment site is a landmark, not a length from the hotspot, so no such tape can be read wrongly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil can be turned by at most 90 degrees in this lesson; choose less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The straight line from %1 to %2 is %3 mm; on a head it is %4 to %5 mm. Check both points and the unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The %1 has a coordinate that is not a number; enter it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The %1 and the %2 are %3 mm apart; place each at its own spot on the head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line from inion to nasion runs %1 degrees to the line between the tragi instead of about 90; check the four points.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both tragi lie on the same side of the line from inion to nasion; check the four points.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The nasion and inion lie %1 mm below the tragi, as if left and right tragus were swapped (or nasion and inion); check the four points.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The %1 is %2 mm away from the skin (at most %3); place it on the head&apos;s surface.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No head could be made out in this skin, so its four points cannot be guessed; place them by hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No skin was found above the tragi; the surface must cover the top of the head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nasion-inion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tragus-tragus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>circumference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The %1 tape reads %2; it must be from %3 to %4. Measure again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The vertex does not settle: half of nasion-inion and half of tragus-tragus do not meet on this skin; check the four points and the surface at the top of the head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two points lie on separate pieces of the skin, so no path joins them; check the head&apos;s mesh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The walk got stuck among triangles without area; repair the mesh first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The walk&apos;s direction stands upright on the skin here; choose one along the skin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The length of a walk must be a number from 0 mm to a kilometre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The direction of a walk must be three numbers, not all zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The walk&apos;s direction points more than 60 degrees away from the skin; choose one along the skin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The skin ends between this edge mark and the pulse point; move the mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pulse point puts the coil&apos;s edge over this mark (the nearest misses it by %1 mm); move the mark or choose another marking rule.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 must be from %2 to %3 %4, but is not a number; correct it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 must be from %2 to %3 %4, but is %5; correct it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nearest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The edge mark of %1 by the %2 rule falls off the head (over the face or past the skin&apos;s border), so it is left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The %1 tape was entered as %2 cm, but the head measures %3 cm; check the tape and the four points.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(grid rows from the start)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(grid columns from the start)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>treatment.label is &quot;%1&quot;, which is not a position of the 10-20, 10-10 or 10-5 system; write one such as F3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The search start falls on the face; shorten search.lateral_mm or search.anterior_mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The start&apos;s edge mark by the %1 rule falls off the head, so no grid can be drawn around it; choose another rule, angle or start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The search grid reaches past the skin&apos;s border; move the start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The position %1 lies on the face of this head; choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The treatment site, %1 cm forward of the hotspot, falls on the face; shorten treatment.distance_mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the treatment site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The skin is flat where a tape line should start, so the line has no direction; move the point a little.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The surface has an edge shared by more than two triangles; repair the mesh first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The surface has neighbouring triangles that face opposite ways; repair the mesh first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The surface has no triangles.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The surface has a coordinate that is not a number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The surface has a triangle with a corner that does not exist.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The surface has a triangle that uses one corner twice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A moved surface must keep its number of corners.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The moved surface has a coordinate that is not a number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A place to be found on the skin has a coordinate that is not a number; give all three.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tape&apos;s length must be a number from 0 up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tape needs a third point beside its two ends; the three points lie in one line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The skin has no unbroken line for a tape between two of the points; the surface ends or has a hole there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The skin ends before the tape does; shorten the distance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template&apos;s brain was pushed in by up to %1 mm over %2 % of it, to stay %3 mm under the skin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 names no regions; install the package it came with again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The brain under the skin is left out, because %1 is missing; install the Debian package mricron-data to see it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 holds no brain; install the package mricron-data again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 holds a voxel that is no region&apos;s number; install the package mricron-data again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 holds no region; install the package mricron-data again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Making the template&apos;s brain, once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measuring the template&apos;s head, once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading the regions of the brain, once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template&apos;s head in %1 cannot be measured (%2); install the package mricron-data again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The head of the case is none of the kinds known; choose it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not go with the generic head, which has its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be the name of a file, but is %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not go with an mri head, whose file says its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The head of the case has no nasion, inion and tragi yet, so the case cannot be saved; place them first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A setting to be written has no such choice; set it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be a coil that ships (%1), but is %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>belongs to the rule landmark, but the rule is forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>belongs to the rule forward, but the rule is landmark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be a position of the 10-20, 10-10 or 10-5 system such as F3, but is %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mm over the flat face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be more than bottom_mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must have at least three points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must not cross or touch itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must run counter-clockwise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be more than inner_mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must list at least one part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil &quot;%1&quot; does not ship with this program; choose one of: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no such folder; check the name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a part of its path is not a folder; check the name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>that is not allowed; check who may read and write there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the disk can only be read; choose another place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the disk is full; make room and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file would be larger than allowed; choose another place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the name is too long; shorten it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its links lead in a circle; choose another place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too many files are open; close some programs and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; try another place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be written: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not the name of a file; choose a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is a folder; choose the name of a file in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not a plain file; choose another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 does not exist; check the name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be opened: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is a folder; choose a file in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not a plain file; choose another one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is larger than %2 bytes, which is the most that is read; choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a group { }</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a list of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the key %2 is given twice in the same group; keep one and read the %3 again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the number %2 at %3 is too large; correct it and read the %4 again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not JSON: the text at %2 is not UTF-8; correct it and read the %3 again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not JSON: it ends too early, at %2; correct it and read the %3 again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not JSON: what stands at %2 does not belong there; correct it and read the %3 again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is nested deeper than %2 levels, which no %3 is; choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not JSON: it holds zero bytes, as no text does; choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not a Scalpmark %2: it should be a group { } but is %3; choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not a Scalpmark %2: format is missing and must be &quot;%3&quot;; choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not a Scalpmark %2: format must be &quot;%3&quot;, but is %4; choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: version is missing and must be %2; add it and read the %3 again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: version must be %2, but is %3; use the program that wrote it, or a newer one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 is not a key known here (known: %3); remove it and read the %4 again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be a group { }, but is %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be a list [ ], but is %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be a number from %1 to %2 (%3), but is %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be a whole number from %1 to %2, but is %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be text in quotes, but is %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be at most %1 characters long, but has %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be three numbers [x, y, z] in mm, but is %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be a list of points [x, y], but is %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be two numbers from %1 to %2 (mm), but is %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be %1, but is %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 is missing; add it and read the %3 again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 %3; correct it and read the %4 again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A number to be written is not finite, so nothing was written; check the head and the case.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A text to be written is not UTF-8, so nothing was written; rename it or type it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>generic head, as built in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>generic head, scaled to the tapes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The head %1 has no nasion, inion and tragi yet; place the four points first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scan %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MRI %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too many files are open to read a file through; close other programs and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The part of the program that reads heads, %1, does not start (%2); build or install the program again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be read: there was no progress for %2 seconds; save it again, or with fewer triangles, in the program that made it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be read: it takes more time or memory than a head does; save it anew, or thinner, in the program that made it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be read: it is damaged in a way that stops the reader; save it anew in the program that made it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was read only in part; try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be read: it needs more than the %2 MB of memory that a head may take; save it thinner in the program that made it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its description is not valid glTF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a number in its description is missing or not usable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a part of it is of no known kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a part of it is longer than what it lies in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it ends before all its elements have come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a part of its mesh has too few corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is damaged: %2; export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it does not begin as a .glb file does</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not glTF 2; export it as glTF 2, or as a .ply file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is packed (%2), which is not read here; export it without compression.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its description points at a part that does not exist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 gives its corners in whole numbers, which is not read here; export it without compression.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 holds lines that are closed in a loop; export the surface alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>metres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not the size of a head in millimetres, centimetres, metres or inches (its largest extent is %2); choose a mesh of a head, or say the unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not the size of a head in %2 (its largest extent would be %3 cm); %4 would fit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Took the numbers in the file for %1, in which it is %2 cm at its largest extent; a head of an adult&apos;s size was made out so, in %3 less well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Took the numbers in the file for %1, in which it is %2 cm at its largest extent; a head of an adult&apos;s size was made out so, in %3 none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Took the numbers in the file for %1, in which it is %2 cm at its largest extent; %3 would fit too, so compare a tape&apos;s length.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Took the numbers in the file for %1, in which it is %2 cm at its largest extent.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is flat (only %2 mm thick); choose a mesh of a head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The skin has one hole, %1 mm around.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The skin has %1 holes, the largest %2 mm around.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading the mesh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>joining triangles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>checking the mesh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thinning out the triangles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>looking for shoulders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be made into a skin (%2); repair the mesh in the program that made it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has too many edges where more than two triangles meet to be repaired here; repair the mesh in the program that made it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 holds no triangle with an area; choose a mesh of the head&apos;s skin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out 1 triangle without area.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out %1 triangles without area.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out 1 triangle that was there twice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out %1 triangles that were there twice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out 1 triangle at edges where more than two triangles met.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out %1 triangles at edges where more than two triangles met.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept the largest of %1 pieces (%2 % of the surface).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is a surface with one side only, on which outside cannot be told; repair the mesh in the program that made it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turned 1 triangle that faced inward.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turned %1 triangles that faced inward.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parted the skin at 1 point where it touched itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parted the skin at %1 points where it touched itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its header has a property of no known type</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its header gives corners or triangles twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its header names no format</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its header has an element without a number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its header has a property before any element</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its header has no end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in line %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a value is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a list&apos;s length is no number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a list is shorter than it says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a list&apos;s length is no whole number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closed a small hole, up to %1 mm around.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closed %1 small holes, up to %2 mm around.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has %2 triangles and cannot be thinned (%3); thin it to 150 000 in the program that made it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its borders alone have too many corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thinned the skin from %1 to %2 triangles; no corner was moved by more than %3 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the skin would move by %1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut the shoulders off below the neck.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The skin is rough (%1 mm up and down within a centimetre), as hair is: marks lie on the hair, not on the scalp; compare the tapes with those of the head itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not a mesh file read here; choose an .obj, .ply, .stl, .gltf or .glb file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>points at %1, which is not a .bin file beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>points at %1, which cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has more than %2 triangles; thin it in the program that made it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has a coordinate that is not a usable number (vertex %2); export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has a triangle with a corner that does not exist; export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is a folder; choose a mesh file in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is empty; export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2; export it as one .glb file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be read as a mesh; export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be read as a mesh (%2); export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 holds no triangles; choose a mesh of the head&apos;s skin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 shows no head that stands out from the air (%2); choose a scan of the whole head with air around it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no air at the edges of the volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is brighter than the air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hardly any air around it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what stands out is %1 x %2 x %3 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every voxel is alike</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading the volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is too short or too damaged to be a NIfTI volume; export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is a NIfTI-2 file, which is not read here; convert it to NIfTI-1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not a NIfTI volume; choose a .nii or .nii.gz file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 keeps header and image in two files; convert it to one .nii file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has a damaged header (number of dimensions); export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is a single picture, not a volume; choose a 3-D scan of the whole head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 claims a side of %2 voxels; export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is %2 voxels long on one side, more than 1024; resample it to 1 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 gives no usable voxel size (pixdim %2); export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 holds colours, complex numbers or another kind of voxel (datatype %2) instead of intensities; export it as 16-bit numbers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is larger than 512 MB; resample it to 1 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has a damaged header (where the voxels start); export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ends before the last voxel its header promises; copy or export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 holds a kind of voxel that is not read here; export it as 16-bit numbers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is a folder; choose a .nii or .nii.gz file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not a plain file; choose a .nii or .nii.gz file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be opened; check who may read it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Took the first of %1 volumes in the file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be read as a NIfTI volume; export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file&apos;s sform cannot be used; its qform gave the world frame.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 says nowhere usable where its voxels lie (no sform or qform); export it again with its position.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 holds no intensity that is a number; export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Took %1 voxels without a number for air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finding the air around the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drawing the surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 shows no skin; choose a scan of the whole head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has too rough a surface to be drawn with %2 triangles; smooth or resample it to 1 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>checking the surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 gave a skin with holes; choose another scan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 gave no usable skin (%2); choose another scan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The result could not be written to the standard output; check where it leads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too many files are open to start a virtual display with; close other programs and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The system could not start a virtual display; close other programs and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no display to draw on and the virtual one (Xvfb) did not start; install the Debian package xvfb.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The virtual display (Xvfb) started but does not answer; try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A picture of %1x%2 pixels cannot be drawn; choose a size from 640x480 to 4096x4096.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The display has no OpenGL 3.2, which pictures are drawn with; install the Debian package libgl1-mesa-dri.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture could not be read back from the graphics driver; choose a smaller --size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture could not be packed as PNG; choose a smaller --size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet could not be drawn; there may be too little memory. Close other programs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet could not be drawn; close other programs and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The search grid has no spot at row %1, column %2; rows and columns run from -1 to 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no display to open the window on; set DISPLAY, or use scalpmark solve or scalpmark picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer %1 did not take the sheet; see whether it is switched on, or save the sheet as a PDF.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture could not be turned into a PNG file; try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder %1 cannot be made, so nothing is kept in case of a crash; save the case yourself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>backward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>toward the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the coil %1, its axis meets the skin %2 from the pulse point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It meets the cortex %1 from where it would with the coil held flat (on the template; a person&apos;s own brain differs).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil rests on its centre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The %1 hits %2; watch out there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the scalp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the left ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the right ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the brow or face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>casing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bridge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>have a second person feel for the nasion, the inion and both tragi before the tape is laid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read every tape twice, to the millimetre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>use a sharp pencil and lay the coil&apos;s edge on the middle of its mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>draw the edge mark as a line along the coil&apos;s edge, and lay the whole edge on it, so that the angle is kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>make the edge mark and lay the coil by the same rule (%1) at every visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check the cap&apos;s brim and arrow against the nasion each time it is put on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look at the coil from the front and from the side, and close the gap on both sides alike</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finding the four points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading the tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pencil marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil&apos;s angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another marking rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cap put on again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil&apos;s tilt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No error is entered, so no habit would change anything.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The site mark and the edge mark lie %1 cm apart, but this plan&apos;s lie %2 cm apart; check that both marks were made for this coil.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This edge mark lies on the face; move the mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil&apos;s edge lies past the head wherever it could reach this mark; move the mark or choose another marking rule.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template&apos;s brain is made anew each time, which takes some seconds, because this user has no folder to keep it in; set HOME, or leave the brain out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template&apos;s brain is made anew each time, which takes some seconds, because it cannot be kept in %1; make that folder writable, or leave the brain out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The case was written as version 1, with one marking rule (%1): it is taken for drawing the marks and for laying the coil alike.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the scan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the MRI</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a file of the template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is %2 that the result is made from, and would be replaced by it; choose another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is a link to a file of another user, %2; write to that file by its own name, or choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is a link that leads to no file; remove it, or choose another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: version must be from 1 to %2, but is %3; use the program that wrote it, or a newer one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be read: this run may take %2 MB of memory, and reading a head up to %3 MB; give it more, or save the head thinner in the program that made it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The system lets this user start no more programs, and a head is read by one of its own; close some and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A mark of the coil&apos;s edge falls off the head; choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cap would slip to where this head has no skin; take a smaller slip, or a scan that reaches lower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is too little skin above the cap&apos;s brim; set the brim lower over the nasion.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cap&apos;s brim must lie above the nasion and below the vertex, but is set %1 mm above the nasion; correct it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The skin ends before the cap&apos;s brim comes round the head; take a scan of the whole head, or set the brim higher over the nasion.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cap has slipped so far that its brim lies over the vertex; put it on again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cap would be turned so far that its arrow no longer runs down the nose; put it on again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The brim&apos;s height over the %1 must be from 0 to %2 mm; measure it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To say how the cap has slipped takes the brim&apos;s height over two or more of nasion, inion and the two tragi; measure another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cap&apos;s arrow cannot pass more than %1 mm beside the nasion; put the cap on again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The brim&apos;s heights fit no slip of a cap on this head: the nearest misses one by %1 cm; read the tapes again, and see whether it is the same cap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The treatment&apos;s edge mark falls off the head, so the cap carries none; choose another rule or site.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tape&apos;s reading error must be a length above 0; correct it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cap can be slid by at most %1 cm and turned by at most %2 degrees in this lesson; choose less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The eye can be off the coil&apos;s axis by at most %1 degrees; choose less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This case lays the coil by the %1 rule, not by looking past its edge; choose drop to see what a look from aside does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure both again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A %1 tape of about %2 would fit the other two: measure it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The %1 tape (%2) and the %3 tape (%4) disagree: their proportion is more than 30 % off a head&apos;s. %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No scaling of the head gives these tapes together: the %1 (%2) and the %3 (%4) disagree. %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The head would be %1 cm long, shorter than nearly all adults&apos;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The head would be %1 cm long, longer than nearly all adults&apos;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The head would be %1 cm wide, narrower than nearly all adults&apos;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The head would be %1 cm wide, wider than nearly all adults&apos;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The head would be %1 cm high above the ears, lower than nearly all adults&apos;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The head would be %1 cm high above the ears, higher than nearly all adults&apos;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: measure all tapes again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: measure the %2 tape again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; a %2 tape of about %3 cm would fit the other: measure it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; a %2 tape of about %3 cm would fit the other two: measure it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A coil cannot be laid by so few marks; make an edge mark, and a site mark or a second edge mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is there already and holds something else; choose another name, or write --force to replace it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slide the cap %1 back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slide the cap %1 forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slide the cap %1 to the patient&apos;s left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slide the cap %1 to the patient&apos;s right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to the patient&apos;s left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to the patient&apos;s right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the cap&apos;s arrow %1 degrees to the patient&apos;s left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the cap&apos;s arrow %1 degrees to the patient&apos;s right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turn its arrow %1 degrees to the patient&apos;s left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turn its arrow %1 degrees to the patient&apos;s right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 backward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 away from the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 toward the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0 (it is under the brim)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brim %1 over the nasion, %2 over the left tragus, %3 over the right, %4 over the inion.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cap sits as it should, as far as these tapes can tell: they leave the pulse uncertain by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; as it sits the pulse goes %2, give or take %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These heights do not say whether the cap has slid forward or back; measure over nasion or inion.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These heights do not say whether the cap has slid to a side; measure over a tragus.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heights hardly say whether the cap is turned: measure how far beside the nasion its arrow passes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of %1 places that fit these tapes the one nearest to the plan was taken, as was asked for (%2); the tapes do not say that the mark is there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of %1 places that fit these tapes, %2 was chosen; the tapes do not say that the mark is there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look at every mark past the coil with one eye, straight down the coil&apos;s axis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each of the four points is felt for to %1 mm, chosen to fit what is published of positions found by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a tape is read to %1 mm, common practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a pencil mark is off by %1 mm, a guess</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the eye alone holds the coil&apos;s angle to %1 degrees, as was found with cap and marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the eye is off the coil&apos;s axis by %1 degrees, a guess</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look past the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Largest share, %1 %: %2. That follows from the assumption that %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the template&apos;s brain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site mark and one front mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front mark as a line along the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front mark and side mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A mark at both front corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chance of an answer is %1; it must be from 0 to 1; correct it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The number of pulses is %1; it must be from 0 to %2; correct it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A threshold&apos;s rule of %1 of %2 cannot be counted; take 5 of 10, 4 of 8 or another of up to %3 pulses.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits from %1 of %2 visits cannot be drawn; take two visits or more of those there are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The measurement of visit %1 is no number; leave the visit out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps of %1 % and, near the threshold, %2 % cannot be taken; they are from 1 to %3 %, the second no larger than the first; correct them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are %1 visits, more than %2; leave some out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The place of visit %1 is no number; leave the visit out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The output of pulse %1 is %2 %; it must be from %3 to %4 %; correct it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are %1 spots, more than %2; leave some out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spot %1 has %2 answers to %3 pulses; there are at most %4 pulses and no more answers; correct it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The place of spot %1 is no number; correct it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The spread of the threshold is %1; it must be from %2 to %3; correct it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The grid of the threshold is %1 %; it must be from %2 to %3 %; correct it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; a %2 tape of about %3 cm or a %4 tape of about %5 cm would fit the others: measure both again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tilted this far, the coil&apos;s axis passes the head; enter a smaller tilt.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Either tilt must be from -30 to 30 degrees; correct it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil&apos;s field does not reach the brain of the round model head here; move the coil.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The skin around the coil is not round enough for the round model head; move the coil.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is too little skin around the coil for the round model head; move the coil.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This point lies further from the middle of the round model head than the coil&apos;s wires do; give one inside the head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This coil&apos;s file tells of no windings, so nothing is known of its field; choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wire of the coil runs through the middle of the round model head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With errors this large more than half of the trials fall off the head; make the errors smaller.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gap can be at most %1 cm more in this lesson; choose less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No spot of the grid has answered yet: the treatment site and its marks hold only if the middle spot answers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>file of starting values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The starting values are missing from this program; install it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit %1 (%2) is dated before the visit entered before it; if that is a slip, correct its date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>makes the fine step (%1) larger than the other (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is an older word for what %1 says too; keep one of them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, line %2: %3; correct it and read the table again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, line 1: &quot;%2&quot; is not a column known here (known: %3); remove it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, line 1: the column %2 is missing; add it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>visit must be a whole number from 1, but is &quot;%1&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>visit is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, line %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>visit %1 is there twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there are more than %1 visits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no visit %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there are more than %1 pulses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must have %1 or more lengths, but has %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be given for a pulse on the grid, or site for one at the treatment site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be a time of day such as 10:32:05, but is %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be a date such as 2026-11-26, but is %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>has more than %1 pulses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An answer to be written is none of the four; log the pulse again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>has more than %1 visits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be &quot;clockwise&quot; or &quot;counter-clockwise&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, line %2: something follows a quotation mark that ends a cell; write two such marks for one inside, and read the table again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, line %2: a quotation mark stands inside a cell that is not quoted; quote the whole cell, and read the table again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, line %2: a quotation mark begins a cell that never ends; add the second, and read the table again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is no table: it holds zero bytes, as no text does; choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not UTF-8; save it as UTF-8 and read the table again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has semicolons between its columns; save it with commas between them and points before decimals.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, line 1: the column &quot;%2&quot; is there twice; keep one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, line %2 has %3 cells, but there are %4 columns; correct it and read the table again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is empty; choose a table whose first line names its columns.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be true or false, but is %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be two whole numbers from %1 to %2, but is %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No visit of the case has pulses, so there are no answers; log them in the window under Pulses, or add a table of them with scalpmark log.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The handout&apos;s words do not fit on one page; choose larger paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The strips could not be drawn; close other programs and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over 99 in 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under 1 in 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thumb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>index finger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pulse on the grid yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing answered on the grid at %1 %; no spot is better than another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pulse at %1 % would tell most about the place here: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>met</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>can no longer be met</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %: %2 of %3, %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Threshold by counting %1: %2 %, after %3 pulses.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counting %1: no pulse yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counting %1 is open after %2 pulses; next to try: %3 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No estimate without pulses.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimate: all %1 pulses were answered; the threshold lies below, nobody knows by how much.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimate: none of %1 pulses was answered; the threshold lies above, nobody knows by how much.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimate from all %1 pulses: %2 %, 95 of 100 from %3 to %4 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A threshold read by eye is on average 11.3 % above one by EMG, up to 27.8 % (Westin et al. 2014). The prescriber decides threshold and dose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; as it sits the pulse still goes where it is wanted, give or take %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 degrees away from the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 degrees to the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coil stands at %1, as wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coil stands at %1, %2 degrees too far away from the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coil stands at %1, %2 degrees too far toward the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pulse goes %1 from the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turned %1 degrees away from the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turned %1 degrees toward the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The marks agree with the plan: laid by them, %1, and %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the coil: %1; then draw both marks new. As they are, %2, and %3 are allowed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the coil over the site mark: %1; then draw the edge mark new. As it is, %2, and %3 degrees are allowed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move and turn the coil: %1; then draw both marks new. As they are, %2 (%3 allowed), and %4 (%5 degrees allowed).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By hand, expect about %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By hand, expect about %1: half of the trials lie within %2, 95 of 100 within %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tilted by %1 degrees, its right side down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tilted by %1 degrees, its left side down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tilted by %1 degrees, its front edge up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tilted by %1 degrees, its front edge down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 and %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil rests on both wings; its centre is %1 clear of the skin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil rests on its wings, first on its %1; its centre is %2 clear of the skin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil rests on its %1, away from its centre; its centre is %2 clear of the skin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tilted by %1 degrees, its right side down, it would rest on both wings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tilted by %1 degrees, its left side down, it would rest on both wings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under the %1 the gap is %2 to %3, %4 under its middle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under the %1 the gap is %2 to %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cap of %1 would be pressed in by %2; enter its thickness for cap and hair.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 visits with known marks; a drift shows from %2 on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No drift shows in %1 visits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last %1 visits lie %2 in front of the first %3: a mark has crept, or the cap sits further forward.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last %1 visits lie %2 behind the first %3: a mark has crept, or the cap sits further back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the last %1 visits the coil is turned %2 further to the midline than in the first %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the last %1 visits the coil is turned %2 further from the midline than in the first %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits need two visits with known marks or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a round model head (radius %1 cm; the skin around the coil lies off it by %2 mm on average).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In it the field is strongest %1 cm from the pulse point (%2), and has more than 71 % of that over %3 cm², more than half over %4 cm².</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strongest %1 cm from the pulse point; over 71 % of that on %2 cm², over half on %3 cm².</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a large coin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a walnut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a hen&apos;s egg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a playing card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the palm of a hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is strongest around the coil&apos;s axis, %1 cm away from it, not under its centre, and its line runs around the axis.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not this patient&apos;s field: no dose, no depth reached and no effect follow from it. Training and illustration only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These tapes fit %1 places, up to %2 apart; choose the one where the mark is, or measure one more tape.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mark is within %1 of where these tapes meet, 95 times of 100.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in %1 of 100 trials another rule is used, a guess</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cap put on again has slid by %1 mm forward or back and %2 mm to a side and turned by %3 degrees, all guesses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coil tilts by %1 degrees to a side and by as much to front or handle, as was found with cap and marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half of the trials lie within %1 of the site, 95 of 100 within %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out, as their marks fall off this head: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is not enough memory for this; close other programs or use a smaller file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This user may start no more programs or threads on this computer; close other programs, or allow more (ulimit -u).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A part of the system failed (%1); try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The search is on the patient&apos;s left side, but %1 lies on the right: the coil is laid on the right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The search is on the patient&apos;s right side, but %1 lies on the left: the coil is laid on the left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must not be given together with spot; a pulse is at one of them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hardly any adult&apos;s head has these lengths together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fine step (%1 %) is larger than the step (%2 %); make answers.fine_percent smaller.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With edge marks drawn by the %1 rule and the coil laid over them by the %2 rule, the pulse at %3 lands %4 cm from the point that was wanted; draw and lay by one rule.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This older case gives one error for the cap (%1 mm): it is used for sliding forward or back and to a side, with %2 degrees of turning.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2 of the start&apos;s pulse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best spot so far at %1 %: %2 (%3 of %4 answered); the chance that it is the best of the nine is %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre of the answers: %1 and %2 of the start, two times of three within %3 and %4; it is pulled toward the middle of the grid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counting %1: met at the lowest output already; the threshold is no higher.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counting %1: not met at the highest output; the threshold is above it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chance alone: an output at which 40 of 100 pulses are answered still passes %1 in %2 of 100 tries.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The %1 hits %2, which holds the coil %3 further off; turn the coil, or ask the prescriber about the site.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2 degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of 100 courses in which nothing changed, chance alone would have this said of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last %1 visits lie %2 nearer the midline than the first %3: a mark has crept, or the cap sits further to the other side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last %1 visits lie %2 further from the midline than the first %3: a mark has crept, or the cap sits further to that side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual here: up to %1 from the site, angle from %2 to %3 degrees off (for a single visit, from the first %4 visits).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its line there runs along the coil&apos;s front axis; in which direction the current runs along it depends on the device.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its line there runs %1 degrees to the right of the coil&apos;s front axis; in which direction the current runs along it depends on the device.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its line there runs %1 degrees to the left of the coil&apos;s front axis; in which direction the current runs along it depends on the device.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These tapes cross at a sharp angle, and the mark may be %1 off; measure one more tape.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the tapes miss it by %1 at most; sure to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the cortex, %1 under the skin (%2), the place where the field is strongest in a round model head is %3 off on average.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the cortex, %1 under the skin (%2), %3 on average.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the field at the wanted place, in a round model head, half of the trials leave at least %1 %, 95 of 100 at least %2 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best way to mark on this head, with these errors: %1 (%2 and %3 degrees off on average).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The habit that would help most: %1 (half that error, and %2 on average become %3).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The step &quot;%1&quot; does not ask for that; put down what it asks for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The place put down for &quot;%1&quot; is no place on a head; put it down again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tape was read as %1 cm; a tape on a head reads %2 to %3 cm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tape for &quot;%1&quot; is held at %2 points; %3 are enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil was laid at %1 degrees; an angle is from %2 to %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No head could be drawn for this number: the head to be scaled has no usual tapes; use another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The exercise has no task; choose one or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The exercise&apos;s task &quot;%1&quot; comes after &quot;%2&quot;; give each task once, in the order of the trade.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The exercise&apos;s title has %1 characters; %2 are the most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The exercise&apos;s number is %1; it must be from 0 to %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The exercise&apos;s time limit is %1 minutes; it must be from 1 to %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The exercise allows %1 tries; it must be from 1 to %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tape is held at two points or more; give it another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two points that the tape is held at lie in one place; pull it on from there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An edge mark of this case falls off the head, so nobody can draw it; choose another marking rule, angle or site for the exercise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This treatment site is a landmark, so it does not hang on which spot of the search answers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The limits of the check must be more than 0, the distance and the angle; correct them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A coil is laid by one rule; choose another mistake beside the first rule.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The errors of gluing and of laying a strip must be from 0 to %1 mm; correct them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>head drawn for the number %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be a list of tasks in the order of the trade (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>belongs to a generic head of the case&apos;s own alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be a step of this exercise, but is %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is there twice (%1); keep one of them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not go with the step %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is held at no places of a head, or at too many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be a place on a head, but is %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seconds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>result</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>has more than %1 attempts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut flat at this height nothing is cut off the head, or all of it; choose another height.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The head could not be written as glTF; close other programs and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not the size of a head (%2 cm from corner to corner, where %3 to %4 cm would do); check the unit or choose another mesh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file holds the face of the person who was scanned; give it to nobody who must not know them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a result</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The head in this page is damaged; have the page written again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What a page for a browser is made of is damaged; run scripts/build release page_parts, and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thinning the skin for a page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What a page for a browser is made of was not built with this program; run scripts/build release page_parts, and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No attempt leads to a pulse.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulse at the end, of %1: half within %2; a quarter within %3, three quarters within %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The class page does not fit on one page; choose larger paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no result to be read; give one or more files of results.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None of the files holds a result that can be read. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out: %1 is of another exercise than most files; look at it with others of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cm²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a round model head its field is then strongest, %2 under the skin, %1 from where it is with the coil held flat, and all of it is left at that place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a round model head its field is then strongest, %3 under the skin, %1 from where it is with the coil held flat, and %2 % of it is left at that place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>go down the forehead with a fingertip and mark the deepest place of the hollow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stand straight in front and mark on the middle line of the nose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>come up from the neck with a fingertip and mark the top of the bump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stand straight behind and mark between both sides of the bump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look at the ear from straight beside it and mark just in front of the ear canal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put the tape&apos;s zero on the point, count from the next whole centimetre, and say the reading before you type it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pull the tape tight and lay it straight over the top: a tape that lies aside reads too long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check that the tape&apos;s end and its zero lie on the points themselves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measure half of nasion-inion from both ends, and mark between where they end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measure half of tragus-tragus from both ears, and mark between where they end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measure the way forward on its own, parallel to the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put the tape&apos;s zero on the vertex and follow the tape down to the ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>draw all spots from the middle one, along the midline and square to it, and measure each step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measure the middle mark from the start with the tape on the skin, and look at its angle from above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put the tape&apos;s zero on the hotspot and read at the mark, twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keep the tape parallel to the midline: look along it from above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lay the coil&apos;s edge over the mark that answered, at its angle, and mark under its centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set the coil&apos;s angle against the midline, looking from above, before you draw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look straight down past the coil&apos;s edge: from aside it seems to lie elsewhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turn the coil until its centre line runs over the site mark, then look again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>close one eye and look straight down past the edge at its mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>use all four distances, and mark where the arcs of the tape meet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was put down, so nothing can be said of a habit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No step was off by more than %1 of its own: no habit to mend shows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mend this first: %1 (%2). Next time, %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure %1 from the vertex along the tape toward %2. Mark the start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure %1 from the vertex along the tape toward %2, then %3 forward, parallel to the midline. Mark the start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure %1 from the vertex along the tape toward %2, then %3 backward, parallel to the midline. Mark the start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the nine pulse points, %1 from one to the next, the start in the middle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the nine edge marks: the middle one %1 along the skin from the start, at %2; the others around it, %3 from one to the next.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the nine edge marks: the middle one by the %1 rule with the coil over the start, at %2; the others around it, %3 from one to the next.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This spot answered: %1. Mark the hotspot: where its pulse went.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This spot answered: %1. Mark the hotspot: where the pulse went of the coil laid over that edge mark, at %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find the position %1 by tape, from the four points and the vertex. Mark the site.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure %1 forward from the hotspot, parallel to the midline. Mark the site.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the edge mark for the site: %1 along the skin, at %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the edge mark for the site with the coil over it, at %1: look straight down past its front edge (drop rule).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the edge mark for the site with the coil over it, at %1: on the skin nearest to its front edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to the side of the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to the side without the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 toward the nose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 toward the back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 degrees too far toward the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 degrees too far away from the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Four points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three tapes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vertex</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nine marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hotspot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil on your marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil on given marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lost mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nasion-inion tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tragus-tragus tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tape around the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hotspot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edge mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coil on one&apos;s own marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coil on given marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lost mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feel for nasion, inion and both tragi, and mark each: the hollow over the nose, the bump at the back, the skin just in front of each ear canal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pull the tape from nasion over the top to inion, from tragus to tragus over the top, then around the head, a tenth of those tapes above each point. Type what you read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark the vertex: half way along both long tapes at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay the coil on your two marks: its front edge over the edge mark (%1 rule), its centre line over the site mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Someone else has drawn these two marks. Lay the coil on them: its front edge over the edge mark (%1 rule), its centre line over the site mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cap was changed, and a mark is lost with it. Its note says: %1. Find its place by tape and mark it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 from the vertex, %2 from the nasion, %3 from the left tragus, %4 from the right tragus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 too long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 too short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pulse goes %1 from where it should</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, the coil laid on these marks without error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; drawing and laying by two rules puts it another %2 off, which is no error of yours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: among the better half of trials by hand on this head (%2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: within what 95 of 100 trials by hand reach on this head (%2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: further off than 95 of 100 trials by hand on this head (%2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do it again on the same head: two tries or more show whether a hand is steady.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right and steady: no step is off by more than %1 on average, nor spreads by more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steady but not right, at this step most: %1. The same %2 off each time (spread %3) is one habit to mend.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right on average but not steady, at this step most: %1. Tries spread by %2: take more time for it, in the same order each time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neither right nor steady, at this step most: %1. Off by %2 on average, spread %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A 10-20 position found by hand spreads by 9.0 mm (17 adults; Jurcak et al. 2005).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hotspot found again by pulses lies 8.1 mm away for the same examiner, 10.3 mm for another (10 adults; Sollmann et al. 2013).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With cap and marks, without tracking: pulse 10.7 mm off on average, coil 6.0 degrees off (42 adults; Caulfield et al. 2022).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By hand on this head: half of the trials within %1, 95 of 100 within %2 (assumed errors of hands, marks on the skin).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on a sphere %1 under its skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A gap of %4 leaves %1 % of it, one of %5 %2 %: each %6 more asks for about %3 % more of the output in use (in people about 3 % of the device&apos;s full output were measured, Stokes et al. 2005).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The language &quot;%1&quot; was not built with this program; build it, or leave --language out for English.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strips of paper in place of a tape that is read gain nothing here: measuring alone puts the pulse %1 mm off on average with them, %2 mm with a tape.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strips of paper in place of a tape that is read: measuring alone puts the pulse %1 mm off on average instead of %2 mm, and all causes together %3 mm instead of %4 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>middle mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 degree too far toward the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 degree too far away from the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An exercise on a screen: no certificate, and no proof of how anybody works on a patient.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mark front, outward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mark front, inward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mark front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mark back, outward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mark back, inward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mark back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mark outward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mark inward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tape is read to %1 (common practice, no source).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The display has no OpenGL 3.2, which the stage is drawn with; install the Debian package libgl1-mesa-dri.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is empty, which is no %2; choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PageQuestion</name>
    <message>
        <source>Page for a browser</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whom is it for?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A patient: Explain&apos;s words, no numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A technician: the numbers, the coil to move, Check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A class: the steps of the lesson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This head is a scan and shows a person&apos;s face. Which head is the page to have?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A drawn head, scaled to the same tapes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The scalp above brow and ears only (the coil cannot be moved there)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The scan, with the person&apos;s face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the page…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Regions</name>
    <message>
        <source>precentral gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>superior frontal gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>superior frontal gyrus, orbital part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>middle frontal gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>middle frontal gyrus, orbital part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inferior frontal gyrus, opercular part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inferior frontal gyrus, triangular part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inferior frontal gyrus, orbital part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rolandic operculum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>supplementary motor area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>olfactory cortex</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>superior frontal gyrus, medial part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>superior frontal gyrus, medial orbital part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gyrus rectus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>insula</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>anterior cingulate gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>middle cingulate gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>posterior cingulate gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hippocampus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>parahippocampal gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>amygdala</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calcarine cortex</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cuneus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lingual gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>superior occipital gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>middle occipital gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inferior occipital gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fusiform gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>postcentral gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>superior parietal gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inferior parietal gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>supramarginal gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>angular gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>precuneus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paracentral lobule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caudate nucleus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>putamen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pallidum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thalamus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>transverse temporal gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>superior temporal gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temporal pole, superior part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>middle temporal gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temporal pole, middle part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inferior temporal gyrus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cerebellum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vermis of the cerebellum</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StatusLine</name>
    <message>
        <source>tape rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nearest rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edge mark: %1, falls off the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edge mark: %1, edge %2 above it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pulse %1 from the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coil %1</source>
        <comment>where it lies</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1  |  coil %2  |  %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TapeNames</name>
    <message>
        <source>Nasion to inion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tragus to tragus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Around the head</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VerdictWords</name>
    <message>
        <source>No check yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click today&apos;s site mark and edge mark, or enter tape distances to them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The marks agree with the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move and turn the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulse %1 from the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil %1, as wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil %1, %2° off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not sure</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WhatIf</name>
    <message>
        <source>from the vertex toward the ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forward to the search start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forward from the hotspot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the site to the edge mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the patient&apos;s left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the patient&apos;s right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the vertex marked %1 too far %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the tape %1 read %2 too short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the tape %1 read %2 too long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the coil turned %1° away from the midline and its edge on the mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the coil turned %1° toward the midline and its edge on the mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if the vertex is off?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if a tape is misread?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if the coil is turned?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if the rules are mixed?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the mark made by the %1 rule and the coil laid on it by the %2 rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the search starts %1 off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pulse goes %1 off the treatment site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, and %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the cap turned, its arrow %1° to the patient&apos;s left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the cap turned, its arrow %1° to the patient&apos;s right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the cap slid %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the coil&apos;s right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the coil&apos;s left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the handle&apos;s side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the coil&apos;s front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the edge looked at %1, %2° off the coil&apos;s axis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if the cap has slipped?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if one looks from aside?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the coil turned %1° away from the midline about its centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the coil turned %1° toward the midline about its centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With %1 more of hair or air under the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the coil&apos;s left wing lifted by %1°</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the coil&apos;s right wing lifted by %1°</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coil lies at %1, as wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coil lies at %1 instead of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a round model head %1 % of the field is left at the wanted place, in its own direction.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if the coil is not on the skin?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, and also %2</source>
        <comment>two mistakes</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a round model head all of the field is left at the wanted place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>most of it (%1 is left)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>some of it (%1 is left)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none of it (it becomes %1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 toward the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 away from the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The search by twitch takes back none of it: the same spot is still the nearest, and the site is off by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a search by twitch the site would be off by %1; another spot then answers, and takes back %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a search by twitch the site would be off by %1 and %2; another spot then answers, and takes back of the first %3, of the second %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The site is then off by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alone, the first would put it %1 off, the second %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if two things go wrong?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept: %1. The next one you choose comes on top.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WhatIfPicture</name>
    <message>
        <source>wanted edge mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wanted search start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wanted pulse point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vertex as marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edge mark, in its place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>real edge mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pulse point, as wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>real pulse point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the first alone, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the second alone, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>real pulse point, both</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>%1 cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run a tape over the top from nasion to inion: %1. Run another from the front of one ear canal over the top to the other: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Halve the first tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half of %1 is %2. Make a short line across the midline there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cross at the vertex</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half of %1 is %2. Where both halves cross is the vertex. If the two tapes do not agree, move the mark and measure again until they do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go toward the ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the vertex go %1 along the tape toward the left ear.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the vertex go %1 along the tape toward the right ear.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go forward, lay the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then go %1 backward, along the midline&apos;s direction. The search starts here. Lay the coil flat on it, its front edge turned %2 toward the midline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then go %1 forward, along the midline&apos;s direction. The search starts here. Lay the coil flat on it, its front edge turned %2 toward the midline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the search grid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark the coil&apos;s edge, and around it eight more points, %1 apart: nine places to try, one after the other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark the pulse point, and around it eight more points, %1 apart: nine places to try, one after the other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find the hotspot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go forward to the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the hotspot go %1 forward, side by side with the midline. This is the treatment site.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The treatment site is the landmark %1, measured out with tapes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark the coil&apos;s edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the site run a tape %1 along the skin, in the direction of the coil&apos;s front, and mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The edge is %1 from the coil&apos;s centre. Look straight down past it and mark the skin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The edge is %1 from the coil&apos;s centre. Mark the skin nearest to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at its centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 right of its centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 left of its centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 toward its front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 toward its handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>touches here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>touches the left ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>touches the right ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>touches the brow or face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hits the scalp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hits the left ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hits the right ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hits the brow or face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: a drawing, not the patient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>run a tape %1 along the skin from the pulse point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look straight down past the coil&apos;s edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mark the skin nearest to the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 forward of the hotspot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half way between %1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tape</source>
        <comment>what the tape measure gave</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nasion to inion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tragus to tragus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Around the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find them again with a tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vertex</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nasion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left tragus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right tragus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>off the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hotspot, pulse point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hotspot, edge mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treatment site, pulse point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treatment site, edge mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under the coil, on the template&apos;s brain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All this on the template; a person&apos;s own brain differs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 from skin to cortex; %2; %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treatment site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hotspot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The three marking rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what staff do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A mark drawn by one rule and laid over by another moves the pulse by about as much. Keep to the chosen rule at every visit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <comment>no edge mark</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other treatment sites in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A licensed prescriber decides site, threshold and dose; the device&apos;s instructions and local codes come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before any pulse, ask about metal or implants in or near the head, pacemakers and stimulators.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask about seizures, drugs that lower the seizure threshold, and pregnancy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ear protection for patient and staff.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Know what to do in a seizure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unnamed case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A drawing, not the patient: where they differ, the tape decides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The distances hold for this head alone, and as far as its four points were placed well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vertex toward ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then backward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grid step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, on edge marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, on pulse points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the mark falls off the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Model</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre to front edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treatment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap at the hotspot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>January</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>February</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>March</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>April</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>June</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>July</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>August</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>September</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>October</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>November</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>December</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <comment>a date: day, month, year</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Landmark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulse point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Placement sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set up by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks found again with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warnings of this plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The patient&apos;s left side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The patient&apos;s right side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the front and the patient&apos;s left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the front and the patient&apos;s right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the patient&apos;s right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the patient&apos;s left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1, %2 and %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Training and illustration only; not a navigation or treatment device. Follow the device&apos;s instructions, local codes and the licensed clinician.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left side stimulated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right side stimulated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, seen %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Patient&apos;s left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Patient&apos;s right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Patient&apos;s right side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Patient&apos;s left side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no named region</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under the skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The brain as on the template; a person&apos;s own brain differs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 from skin to cortex</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centre %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 to %3</source>
        <comment>a part of the coil and its gaps in mm</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rests on its wings, centre clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cz (vertex)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other sites in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge mark, chosen rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge mark, other rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search grid: pulse points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search grid: edge marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forward (midline direction)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front axis of the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil&apos;s outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil and windings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cortex under the coil (template)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil %1</source>
        <comment>where it lies</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pulse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edge mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 from the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the hotspot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the treatment site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as laid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half of them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>.</source>
        <comment>what stands before decimals: 5.0</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its centre where a tape from the mark ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look straight down past its edge at the mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its edge as near to the mark as it goes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cap, its arrow down the nose: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found within</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 *</source>
        <comment>a length, with a footnote</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> * These tapes fit another place as well; measure all four.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All this on the template; a person&apos;s own brain differs. The first depth is to the nearest cortex, the second the middle of those over a patch of 1 cm around. Which muscle answers at the hotspot only the twitch can say.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tape for each search mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>toward the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>backward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2 off)</source>
        <comment>a tape to draw, and how far off without it</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn at these lengths, the marks put the laid coil&apos;s pulse on the point measured. In brackets how far off it lands with marks drawn by the %1 rule at %2 and the coil laid by the %3 rule.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge marks drawn by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laid over a mark by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge mark drawn by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By hand: %1 %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the pulse was wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cap: brim, and arrow down the nose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Places that fit today&apos;s tapes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>eye</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line of sight past the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search on the right side, treatment on the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search on the left side, treatment on the right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wanted here, %1 from the pulse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn by %1, laid by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks of the way chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mostly %1</source>
        <comment>a region of the brain</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and others</source>
        <comment>a region of the brain</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, some %2</source>
        <comment>two regions of the brain</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brodmann area %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left %1</source>
        <comment>a gyrus</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right %1</source>
        <comment>a gyrus</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laid with a tape over this mark, the pulse lands %1 to the side of the point that was measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laid by eye over this mark, the pulse lands %1 to the side of the point that was measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laid with a tape over this mark, the pulse lands %1 behind the point that was measured, toward the coil&apos;s handle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laid by eye over this mark, the pulse lands %1 behind the point that was measured, toward the coil&apos;s handle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laid with a tape over this mark, the pulse lands %1 in front of the point that was measured, toward the coil&apos;s front edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laid by eye over this mark, the pulse lands %1 in front of the point that was measured, toward the coil&apos;s front edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark it with a tape of %1 along the skin instead, as the coil is laid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark it straight down past the coil&apos;s edge instead, as the coil is laid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark the skin nearest to the coil&apos;s edge instead, as the coil is laid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No tape makes up for it here: make the mark anew once the coil is on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the mark %1 along the skin instead of %2, or turn it into a drop mark once the coil is on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the mark %1 along the skin instead of %2, or make it anew, on the skin nearest to the edge, once the coil is on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 along the skin from</source>
        <comment>cm or inches</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge marks by the %1 rule. In bold: the two or three tapes that find each mark best on this head, and how closely they do, 95 times of 100, where each is read within %2 (typical error).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no cortex under the pulse point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hotspot: %1 from the chosen mark</source>
        <comment>cm or inches</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap, %1</source>
        <comment>a unit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>treatment: %1 from the chosen mark</source>
        <comment>cm or inches</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 along the skin</source>
        <comment>cm or inches</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 from the site</source>
        <comment>cm or inches</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cap and hair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap at the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Induced field, in a round model head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about %1 from the pulse point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Patch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leaves about %1 of it</source>
        <comment>a percentage</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trials by hand: half, and 95 of 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visits to come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nasion to inion over the vertex, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left to right tragus over the vertex, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Around the head: Fpz, left ear, Oz, right ear, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backward from the ear-to-ear strip to the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forward from the ear-to-ear strip to the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forward from the hotspot to the treatment site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half: vertex</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ear-to-ear strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hotspot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, piece %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pulse point wanted to edge mark: %1 of tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coil&apos;s front, centre to front edge %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulses and answers, visit %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Threshold at the spot: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Threshold written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Threshold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge mark, the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marked anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not seen from here: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No room beside its mark: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>visit %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>95 of 100 such visits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulse by each visit&apos;s marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge mark, tape rule: edge %1 above this mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tape rule: edge %1 above this mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge mark, drop rule: edge %1 above this mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop rule: edge %1 above this mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge mark, nearest rule: edge %1 above this mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nearest rule: edge %1 above this mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge mark, edge %1 above it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edge mark, edge %1 above it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Field under the coil&apos;s centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No field is known of this coil here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not this patient&apos;s field; no dose and no effect follow from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Field over 71 %, over half (model)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line of the field (model)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap under the coil, %1</source>
        <comment>mm or inches</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>touches; a line every %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treatment site, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>site if the middle spot answers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>treatment site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site if the middle spot answers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centre to front edge %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tape, %1, from</source>
        <comment>cm or inches</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tape, a tick each %1</source>
        <comment>cm or inch</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>95 of 100 trials by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>a percentage</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why the gap matters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The field runs along the coil&apos;s front axis, and its patch is longest that way. At about 45° to the midline this crosses the central sulcus, onto the precentral gyrus. In a round model head a coil turned by 20° leaves %1 of the field along that line, one turned by 45° %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The vertex lies at half of each length on any head, so whoever has a tape can find it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One tape alone tells how far forward the vertex lies, the other how far to the side; it takes both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The part of the brain that moves a hand lies to the side of the vertex, on the side across from that hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil is turned because the fold of the brain that moves the hand runs aslant: with the coil about square to it a pulse of the least output is answered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The twitch shows on this person where a pulse reaches the part that moves the hand. A tape cannot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One pulse at a time, the technician watches the thumb and index finger of the relaxed right hand. The place that twitches steadily is the hotspot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One pulse at a time, the technician watches the thumb and index finger of the relaxed left hand. The place that twitches steadily is the hotspot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A distance from the place that answered carries over what the tapes had missed; one from the vertex would miss it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil hides its own centre, so its edge needs a mark. And the coil is flat, the head round: the edge hangs in the air, and tape, drop and nearest come down at three places.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gap between edge and skin is %1 there, so do it the same way at every visit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a depth</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the vertex</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the nasion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the left tragus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the right tragus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in</source>
        <comment>inches</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in</source>
        <comment>inches</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 away from the midline</source>
        <comment>an angle</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to the midline</source>
        <comment>an angle</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The flat coil rests gently on your head, and you hear it click.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each click sends a short magnetic pulse through the skin to the part of the brain under the green diamond, which is the place your clinician has chosen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What happens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you feel and hear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each click is loud, like a snap of the fingers beside your ear, so you are given ear plugs. You feel a tap on the skin under the coil, and muscles near it may twitch. Say so at once if anything hurts or feels wrong: it can be stopped at any moment.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long it takes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You sit in a chair and stay awake. The first time takes longest, since the place is looked for; after that, marks on a cap lead back to it. How many visits there are, how long each one is, and what you may do afterwards, your clinician tells you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 forward of the middle spot, if that one answers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at %1</source>
        <comment>a landmark</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not found yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one step forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one step back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one step outward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one step toward the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Demo case, not a real person: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Angle card: lay the long line along the midline&apos;s direction, the nose end to the nose; fold the second half behind the first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site mark, %1 from vertex / nasion / tragi</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the spot: %1</source>
        <comment>of the grid</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bar: pulses answered, at %1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search start, wanted here: %1 from the pulse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A magnetic field spreads as it leaves the coil, so every millimetre between coil and brain takes some of it away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nerve fibres answer most readily to a field along them, and those of the hand&apos;s fold run across it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Demo case, not a real person: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held by hand: not where the plan has it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each click sends a short magnetic pulse through the skin to the part of the brain that is lit under the green diamond, the place your clinician has chosen. The lit part is about as large as %1, strongest in its middle and fading outward. It is drawn on a sample brain, not your own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each click sends a short magnetic pulse through the skin to the part of the brain that is lit under the green diamond, the place your clinician has chosen. It is drawn on a sample brain, not your own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To find the marks again: tape in %1 from</source>
        <comment>cm or inches</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The field fades fast with distance. In a round model head %5 of hair leave %1 of it at the wanted place, %6 leave %2, %7 leave %3; a wing lifted by 10° leaves %4. Part the hair, and look under both wings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>en</source>
        <comment>this language, by ISO 639-1</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The head. Arrow keys turn it, plus and minus bring it nearer and further.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With Shift, arrow keys move the coil by a millimetre; Page Up and Page Down turn it by a degree, Escape puts it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <comment>a side of the head</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nearer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Further</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As at first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the numbers large, one at a time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The numbers of the marks, one at a time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag the coil over the head, or use the buttons. This changes nothing in the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil a millimetre forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil a millimetre backward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil a millimetre toward the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil a millimetre away from the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Angle to the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the coil back on the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check today&apos;s marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan&apos;s edge mark falls off the head, so there is nothing to lay the coil over and nothing to check.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type what the tape reads from two or more points to each of today&apos;s marks, in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a drawing of a head, scaled to the tapes of the person&apos;s head; it is not that person, and places on it are a few millimetres off those on that head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is the scalp above brow and ears of a person&apos;s head, made from a scan; the face and the ears are not in this page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a picture of a person&apos;s head, made from a scan. It shows that person&apos;s face: keep this page as you keep the scan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The skin is thinned for this page. Tapes to a coil moved here agree with those of the whole scan within %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treatment site: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the vertex %1 toward the ear, then %2 forward: the start. Nine spots, %3 apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Landmarks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nasion to inion %1, tragus to tragus %2, both over the vertex; around the head %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil on the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil laid by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tape: so far along the skin from the pulse point. Drop: straight down the coil&apos;s axis past its front edge. Nearest: the skin nearest to that edge. A flat coil on a round head has three edge marks; use one rule at every visit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Legend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What happens with the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If this line stays, this browser is too old to draw the head, or scripts are switched off in it: open the page in a browser of 2023 or newer. What is written here holds all the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A picture of a head, made from a scan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A drawing of a head, shaped by a tape measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Licences of what is in this page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This browser cannot draw the head (it has no WebGL 2). What is written here holds all the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pulse %1 from the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 forward of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 behind it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 toward the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 away from the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nearest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: edge %2 above its mark</source>
        <comment>a rule, and how far its mark lies from the edge</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil cannot lie there; it stays where it last could.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil is back where the plan has it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>getting ready…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil cannot be moved in this browser (%1). What is written here holds all the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tape distances are being worked out…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Agrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tapes meet at so flat an angle that the mark may lie up to %1 off; measure one more tape to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Several places fit the site mark&apos;s tapes: choose one, or measure one more tape.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Several places fit the edge mark&apos;s tapes: choose one, or measure one more tape.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place %1, %2 from the wanted one</source>
        <comment>A, B; a length</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type two or more tapes of each mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is no length: type it as read from the tape, such as %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for the marks…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today&apos;s site mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today&apos;s edge mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today&apos;s pulse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, from %2</source>
        <comment>a mark, and where the tape begins</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step by step: each trainee&apos;s last attempt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own error, %1: quarter</source>
        <comment>%1 is mm or in</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>three quarters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with what came before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>angle, degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own error: from where the step should be given what came before, so that an error is paid for once. Half of the trainees lie between a quarter and three quarters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>head drawn for the number %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the case&apos;s own head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 trainees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each disc: where one trainee&apos;s pulse goes. Diamond: where it was wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strongest, %1 under the skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over 71 % of that on about %1, over half on about %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A gap of %1 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 under the skin</source>
        <comment>cm or inches</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tapes: not yet</source>
        <comment>tape distances are not worked out</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the place that lights up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the place it reaches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the tape as it lies right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>your tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where it should be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where it should be, by your marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pulse wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>your pulse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From close by: forward is up, a square is %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files left out: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heads differ by %1 and more, and every place on the scalp is found as a share of these two lengths.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the hand answers differs from person to person by %1 and more; only trying tells.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure both fine lines at the edge of this page: %1. If one is not, do not use the strips; print them again at 100 %, without fitting to the page. For this head alone; training and illustration, the device&apos;s instructions and the licensed prescriber come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut along the lines. Glue the piece with a number under it on the tab of the same number, its left end on the line before the tab. Lay a strip taut, its first line on its point, and draw at its lines: nothing is read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this line: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left end: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front axis, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inches</source>
        <comment>tape in inches from</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inch</source>
        <comment>a tick each inch</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::AngleField</name>
    <message>
        <source>From %1 to %2 whole degrees.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::AnswerSettingsFields</name>
    <message>
        <source>An answer is a twitch of the</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thumb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thumb alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The index finger alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>either</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thumb or the index finger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>5 of 10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Five answers to ten pulses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4 of 8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Four answers to eight pulses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step of the output</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fine step, with Shift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answers counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counting rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>index finger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An output is enough with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write whole percent, as the stimulator shows.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::CapFields</name>
    <message>
        <source>Cap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By its brim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cap: enter the heights of its brim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two or more heights say how the cap has slipped since the marks were made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brim over the nasion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brim over the left tragus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brim over the right tragus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brim over the inion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arrow right of the nasion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heights by tape, straight up toward the vertex. The arrow where it passes the nasion, to the patient&apos;s right; to the left with a minus.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::CaseFiles</name>
    <message>
        <source>Cases (*.json)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heads (*.obj *.ply *.stl *.gltf *.glb *.nii *.nii.gz);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cases and heads (*.json *.obj *.ply *.stl *.gltf *.glb *.nii *.nii.gz);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a case or a head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The other version could not be put beside it, so nothing was saved; save under another name.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::CheckStep</name>
    <message>
        <source>Check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find today&apos;s two marks on the cap or the skin. Click each on the head here, or type two or more tape distances to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allowed distance from the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allowed angle error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the check over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then click the mark on the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: click it on the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: enter tape distances</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the vertex</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the nasion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the left tragus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the right tragus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now click today&apos;s site mark on the head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now click today&apos;s edge mark on the head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today&apos;s site mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today&apos;s edge mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As good as tape and pencil get on this head: 95 of 100 pairs of marks made by careful hands lie within.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These two are common practice; they have no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your own limits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The strict limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What tape and pencil can do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to those of common practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets the limits that careful hands meet on this head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The marks were drawn anew today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From this visit on they are the reference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Adds the tapes to both marks, and the brim&apos;s heights, to today&apos;s visit of the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The visit is kept once the tapes to the marks are worked out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter as today&apos;s visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entered as visit %1; see Course.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Choice</name>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::ClassPanel</name>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The class by step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class page…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the class as one page of PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save every step of every trainee as a table (CSV)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to choosing an exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 results</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulse off by %1 in the middle of the class; half of it from %2 to %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half of the class</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::CoilOnStage</name>
    <message>
        <source>Coil laid down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil laid on a spot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil moved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil turned</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::CourseChart</name>
    <message>
        <source>Distance from the site by visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Angle off by visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Angle off, degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulse from the site, %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::CoursePanel</name>
    <message>
        <source>What the visits show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finding the marks of all visits…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marked anew at visit %1; from there on the new marks are the reference.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Training and illustration only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This case has no visits yet. Pulses begin one, and so does Check, with today&apos;s marks.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::ExplainPanel</name>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the worksheet (Esc)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A drawing of a head, shaped by a tape measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A picture of a head, made from a scan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screen before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saves what the stage shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handout…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saves one page to take home, in these words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prints that page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saves a page for a browser: the head to turn, in these words</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Foot</name>
    <message>
        <source>The plan is as it was; only the coil goes back (Esc)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the coil is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the site</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::GapPanel</name>
    <message>
        <source>the scalp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the left ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the right ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the brow or face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Touches %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, %1 under its middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear of ears and brow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hits %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap under the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colours the skin under the coil by the gap, where the coil lies or is held (Ctrl+G)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the coil rests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rests on its wings, centre %1 clear.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre %1 clear.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 to %3%4.</source>
        <comment>a wing, its smallest and largest gap, and its middle&apos;s</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rests on cap and hair (%2 thick) %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::HeadExtras</name>
    <message>
        <source>Working out tape distances</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laying the brain under the skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laying tapes over the whole head</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::HeadJob</name>
    <message>
        <source>Working out tape distances</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laying the tapes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laying the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Getting the head ready to be turned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laying tapes over the whole head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laying the brain under the skin</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::LandmarksStep</name>
    <message>
        <source>Click the nasion: the hollow where nose meets forehead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click the inion: the bony bump at the back, above the neck.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click the patient&apos;s left tragus: just in front of the left ear canal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click the patient&apos;s right tragus: just in front of the right ear canal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Landmarks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shown on the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>10-20</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The 21 positions of the 10-20 system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>10-10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The positions of the 10-10 system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>10-5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All 345 positions of the 10-5 system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a label, such as F3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a landmark by its label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place nasion, inion and tragi anew…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use these four points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn upside down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files do not say which way is up; press until the head stands upright and faces you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discard this head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no landmark “%1” in the 10-5 system; type a label such as F3 or CPz.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, placed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, not placed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All four are placed. Drag one to move it, or use them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the head by dragging beside it; drag a placed point to move it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pencil a short line half way along each long tape; where the two lines cross is the vertex, Cz.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A label of the 10-5 system, such as F3; Enter marks it on the stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This one is right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Confirms the computer&apos;s guess; or drag the point where it belongs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guess the four points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fits the built-in head to this skin; each of the four is then to be confirmed or moved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is marked on the stage.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is the older label of %2, marked on the stage.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By tape: %1 from the vertex, %2 from the nasion, %3 from the left tragus, %4 from the right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guessing…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, guessed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A computer&apos;s guess. Look at it: is it right? Else drag it where it belongs. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pencil a short line half way along each long tape, at %1 of nasion to inion and at %2 of tragus to tragus; where the two lines cross is the vertex, Cz.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::LengthField</name>
    <message>
        <source>From %1 to %2 %3.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::LessonBar</name>
    <message>
        <source>Previous</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous step (Page Up)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Play</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Play the lesson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Play or pause (Space)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next step (Page Down)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Play again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pause the lesson</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::LessonPanel</name>
    <message>
        <source>Lesson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps of the lesson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page Down and Page Up go to the next and the previous step, Space plays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if something goes wrong?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::LessonTools</name>
    <message>
        <source>Why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Says at each step why it is done so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How fast the lesson plays</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plays slowly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plays at reading pace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plays quickly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show it on the right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show it on the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moves the case to the other side, as in the search; undo takes it back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::MainWindow</name>
    <message>
        <source>Unnamed case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1[*] - Scalpmark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say first whose head this is: the tapes of the case do not fit it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 head was kept and is forgotten; its file opens more slowly once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 heads were kept and are forgotten; their files open more slowly once.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::MeasureStep</name>
    <message>
        <source>Measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tape from nasion over the top to inion, from tragus over the top to tragus, and around the head above the brows. Write the three lengths down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a scan or MRI…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A head surface (OBJ, PLY, STL, glTF, GLB) or an MRI volume (.nii, .nii.gz)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use the generic head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nasion to inion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tragus to tragus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Around the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work out tape distances</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They were left out when loading this head was cancelled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Generic head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Head: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The head on the stage: %1, %2, %3 %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 | %2 | %3 %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 measured, but %3 on this head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cap&apos;s brim over the nasion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the cap on, its arrow down the nose, check by tape toward the vertex: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No tape of this person yet. The built-in head on the stage, nobody&apos;s own, measures %1, %2, %3 %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no tapes yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Menus</name>
    <message>
        <source>From the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the patient&apos;s left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the patient&apos;s right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save a &amp;picture…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save a s&amp;heet…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;rint the sheet…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay the coil &amp;on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the treatment site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the hotspot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the search start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skin opacity in percent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Brain under the skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Legend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Numbers on the stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Gap under the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glid&amp;e between views</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions and &amp;about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight down on the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lock the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Induced field (round model head)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Case&apos;s label in Explain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Large</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lar&amp;gest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pro&amp;jected: Teach and Check for a whole room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re&amp;cent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lengths in inc&amp;hes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Dark, except the stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text si&amp;ze</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Export the head…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save a pa&amp;ge for a browser…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Forget heads kept to open quickly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save s&amp;trips of paper…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::NextMark</name>
    <message>
        <source>Previous</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, from %2</source>
        <comment>a mark, and where the tape begins</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The numbers of the marks, one at a time</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::NoticeBar</name>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close this message</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::NumberField</name>
    <message>
        <source>%1, in %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Output</name>
    <message>
        <source>No printer is set up on this computer; save the sheet as a PDF and print that elsewhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Placement sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A sheet or picture is still being written; wait until it is done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet on A4 (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet on Letter (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save a sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet is saved in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet is on its way to the printer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save a picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture is saved in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the handout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handout (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The handout is saved in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The handout is on its way to the printer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save a page for a browser</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pages (*.html)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The page is saved in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For other viewers (*.glb)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mesh with colours (*.ply)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For a 3D printer (*.stl)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For a 3D printer, cut flat above the brow (*.stl)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The head is saved in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strips on A4 (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strips on Letter (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save strips of paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The strips are saved in %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::OutputJob</name>
    <message>
        <source>Writing the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Making the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing the sheet&apos;s views</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing the handout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Making the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Making the head solid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Making the strips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing the strips</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::PlaceChoice</name>
    <message>
        <source>Nearest to the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tapes do not say that the mark is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: take the place nearest to the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: place %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Placing</name>
    <message>
        <source>nasion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left tragus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right tragus</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::PlainField</name>
    <message>
        <source>From %1 to %2 %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: type a number from %2 to %3 %4, such as %5; “%6” cannot be used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Practise</name>
    <message>
        <source>Practise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scoring the class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exercises (*.json)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Results (*.json)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open an exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the results of a class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the result</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>result</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the class page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pages (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::PulseList</name>
    <message>
        <source>spot %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1   %2, %3 %: %4   %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1   corrected, first noted: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulses of the visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The keys 0 to 3 correct the answer of the chosen pulse</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::PulseLog</name>
    <message>
        <source>A case holds at most %1 visits; begin another case.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A visit holds at most %1 pulses; begin another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no pulse to take back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulse taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulse corrected</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::PulsePad</name>
    <message>
        <source>Spot %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spot %1: %2, answered %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::PulsePanel</name>
    <message>
        <source>Pulses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keys: 0 none, 1 thumb, 2 index finger, 3 other; up and down the output, with Shift finely; left and right the spot; Backspace takes the last pulse back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Output, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answer: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pulse yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulse %1: %2 %, %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes the last pulse back: it was none, or entered by mistake (Backspace)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::PulsesStep</name>
    <message>
        <source>Pulses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay the coil on the spot, give one pulse, watch the relaxed hand, and note what you saw.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulses of this visit, the last on top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials of who gives the pulses; may stay empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who gives the pulses; may stay empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hotspot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This visit is over: a pulse begins another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 pulses, threshold %2 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 pulses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take spot %1 as hotspot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the best spot as hotspot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the most telling spot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the centre as hotspot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try next: spot %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::RulesPicture</name>
    <message>
        <source>tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nearest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The three rules, seen from beside the coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: edge %2 above its mark</source>
        <comment>a rule, and how far its mark lies from the edge</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pulse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::SaveStep</name>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the numbers down on paper too: a cap gets lost, and a tape finds the marks again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label of the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printed on pictures and sheets. No names: use your own code for the person.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writes the case into its file, or asks for one (Ctrl+S)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saves what the stage shows as a picture (Ctrl+Shift+P)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saves the placement sheet as PDF, A4 or Letter (Ctrl+E)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prints the placement sheet (Ctrl+P)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lengths that find the marks again, one at a time in digits as large as a hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A locked plan is not changed by a slip of the hand; saving locks it (Ctrl+L)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed since it was saved in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked: unlock the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>saved, locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the numbers large</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page for a browser…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saves one file that any browser opens from disk: the head to turn, the coil to move (Ctrl+Shift+W)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The head with its marks, for other viewers, or with its marks standing out for a 3D printer (Ctrl+Shift+E)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strips…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saves strips of paper at true size, marked for this head, in place of a tape that is read (Ctrl+Shift+T)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::ScorePanel</name>
    <message>
        <source>Score</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step by step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Score by step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The step before, on the stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next step, on the stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials, if you like</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand in the result&apos;s file and in the table of the class; without them nobody is named</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the result…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All tries, for the trainer to put a class together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Again, same head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another try on the same head: is the hand steady?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to choosing an exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carried, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One&apos;s own error: from where the step should be, given what came before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Error carried over: what earlier steps had done to it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pulse at the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Again, same head (%1 left)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own error: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carried over: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Together: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of it misread: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::SearchStep</name>
    <message>
        <source>Search</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The patient&apos;s left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The patient&apos;s right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the vertex toward the ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The grid is drawn on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edge marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What staff draw: the nine marks are evenly spaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pulse points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The nine pulse points are evenly spaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Angle to the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre to front edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cap and hair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tape of the centre-to-edge length along the skin from the pulse point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nearest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay the coil on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the vertex tape %1 toward the %2 ear, then %3 %4: the start. Pencil a bar along the coil&apos;s front edge at each of the nine spots.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 + %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coils to choose from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The length from its centre to its front edge becomes the coil&apos;s own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The grid&apos;s edge marks are drawn by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking straight down past the edge of the coil held there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The skin nearest to the edge of the coil held there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil is laid over a mark by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tape run from under the coil&apos;s centre to the mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking straight down past the coil&apos;s edge at the mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bringing the coil&apos;s edge as near to the mark as it goes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rule for drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rule for laying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grid step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try a spot: lay the coil on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This spot answered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes the spot that the coil is on as the hotspot, as in the next steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hotspot</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Session</name>
    <message>
        <source>Loading the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no file %1; choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place all four points first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Head from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan is locked, since it was saved; unlock it to change it (Ctrl+L, or the button in the last step).</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::SetupPanel</name>
    <message>
        <source>Begin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin the exercise on a fresh head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open an exercise that was saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save this exercise, for others to open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the results of a class together; they can be dropped on the window as well</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whose head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn for a number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An adult&apos;s head drawn by chance; the same number gives a whole class the same head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The case&apos;s own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The head of the case on the worksheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number of the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From 0 to %1. The same number gives the same head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The left side is stimulated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The right side is stimulated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The spot that answers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spot that answers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tasks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To pick a few</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes for all of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes for all of it; 0 is no limit, %1 the most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How often it may be done; 0 is no limit, %1 the most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the exercise is called in its file and on the class page; may stay empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing the head…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::SiteStep</name>
    <message>
        <source>Site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hotspot is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The treatment site is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forward of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tape forward from the hotspot, parallel to the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a landmark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A position of the 10-20, 10-10 or 10-5 system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forward from the hotspot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treatment distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its edge mark is drawn by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tape of the centre-to-edge length along the skin from the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking straight down past the edge of the coil on the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nearest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The skin nearest to the edge of the coil on the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Landmark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Landmark of the treatment site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A label of the 10-5 system, such as F3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treat on the other side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other sites, and how far they lie from this one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other sites; Enter chooses one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Double-click, or Enter, makes it the treatment site.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hotspot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treatment rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rule for drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treatment site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the landmark&apos;s label, such as F3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no landmark “%1” in the 10-5 system; type a label such as F3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lies on the patient&apos;s right, but the search is on the left. For the right side press Enter again; on the left it is %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lies on the patient&apos;s left, but the search is on the right. For the left side press Enter again; on the right it is %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treat on the right, at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treat on the left, at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treatment landmark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The spot that answered (the hotspot)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The spot that answered: not found yet. The stage shows the site as it would be if the middle spot answers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The spot that answered: not found yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Circle the spot that gives a steady twitch of the hand. From its pulse point tape %1 forward, parallel to the midline: the treatment site.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Circle the spot that gives a steady twitch of the hand. The treatment site is the landmark %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hotspot not found yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For comparison; it has no label of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hotspot lies between spots: %1. A spot takes its place.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::SmallLengthField</name>
    <message>
        <source>mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From %1 to %2 %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: type a length from %2 to %3 mm, such as %4; “%5” cannot be used.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::SpotPad</name>
    <message>
        <source>nose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, the hotspot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::StageDirector</name>
    <message>
        <source>Side</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::StageView</name>
    <message>
        <source>Stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The head with tapes, marks and coil. Arrow keys turn the coil, with Ctrl they move it; 1 to 6 choose a view. While points are placed, Enter sets one in the middle of the picture and Ctrl with arrow keys moves it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::StartPage</name>
    <message>
        <source>What do you begin with?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used lately</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cases used lately; Enter opens one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A person whose head is measured now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A case from a file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A case, a scan or an MRI</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The demo case, for trying things out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not a real person&apos;s head, with everything filled in</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Step</name>
    <message>
        <source>Step %1, %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::TapesQuestion</name>
    <message>
        <source>The same person&apos;s: keep both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody else&apos;s tapes: take them out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wrong head: back to the one before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tapes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 entered, %3 on this head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whose head is this? The tapes of the case do not fit it. %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::TaskPanel</name>
    <message>
        <source>Take a tool. A drag turns the head, the wheel brings it nearer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press on the skin: the mark under the finger grows darker over a bump or hollow of the bone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pull from one place to another; take the end up again to pull on. The right button (H) holds the tape where it is. Read it off its print.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points and lines are your own help. What is asked for is marked with a cross.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cross is the answer to the step; another one takes its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carry the coil by its handle, turn it by its wings. Look along its edge as you would at the chair.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Task</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps of the task</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feel for the bone (F)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pull the tape over the head (T)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay the coil on the head (C)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A point in pencil, for your own help (P)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A short line in pencil, for your own help (L)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cross</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cross in pencil: the answer (X)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold it here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A finger holds the tape where its end is; pull on from there (H)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the tape&apos;s zero, around the head (O)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes tape or coil off the head (Delete)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rubs out what was done last (Ctrl+Z)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The task before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next task</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On to the next task; what is on the head stays</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End the exercise and see the score; what is not done counts as not done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Task %1 of %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read off</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Teach</name>
    <message>
        <source>Step %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Why: %2</source>
        <comment>what staff do, and why</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::ThresholdChart</name>
    <message>
        <source>Answers against output</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>output, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dots: pulses; shaded: chance of an answer</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::ThresholdPanel</name>
    <message>
        <source>Threshold written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write whole percent, as the stimulator shows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Threshold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: try %2 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes this output for the next pulse; for finding the threshold only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Threshold at spot %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pulse at this spot yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the counting&apos;s next output</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the estimate&apos;s next output</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::TolerancePanel</name>
    <message>
        <source>By hand, how far off?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far off the pulse could be when this case is measured, marked and laid by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far off by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show where they land</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draws around the treatment site where half, and 95 of 100, of the pulses land</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each of the four points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One reading of a tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pencil mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil&apos;s angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laid by another rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Given up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ways to mark, worst to best: pulse and angle off on average</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To first order. The site mark is used in each. The marks of the one chosen are drawn on the head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The look past the coil (a guess)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A way to mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1:
%2, %3°</source>
        <comment>a way to mark, and below it: pulse off, angle off</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trials done, in percent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop the trials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil&apos;s tilt, to a side and to its front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cap slid forward or back (a guess)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cap slid to a side (a guess)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cap turned (a guess)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Puts all of them back to what they are without an entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try it out by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&lt;b&gt;%1 off on average&lt;/b&gt;; half of the trials lie within %2 of the site, 95 of 100 within %3. %4 %5&lt;br&gt;%6&lt;br&gt;%7</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typical errors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Errors of the hand (typical)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trying it many times…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::TopBar</name>
    <message>
        <source>Worksheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter a case, step by step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk a class through the procedure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check today&apos;s marks, in large type</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Explain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show a patient what happens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save what the stage shows as a picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the placement sheet as PDF, A4 or Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Course</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look back over all visits of the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Practise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do the whole job on another head, and see in millimetres what each step costs</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::UndoLinks</name>
    <message>
        <source>Point placed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Visit</name>
    <message>
        <source>Working out tape distances was cut short; enter the distances again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today&apos;s site mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today&apos;s edge mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No spot of the grid has answered yet, so nobody knows where the site is; say which did in the step of the site first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check started over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allowed distance and angle</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::WhatIfControls</name>
    <message>
        <source>What if: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The vertex is marked too far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Toward the nose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Toward the back of the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Toward the patient&apos;s left ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Toward the patient&apos;s right ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the vertex toward the ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first length to the search start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>then forward to the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The second length to the search start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forward from the hotspot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The length to the treatment site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the site to the edge mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The length along the coil&apos;s front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mark comes too far out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mark comes too near</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turned by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil&apos;s front is turned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>toward the midline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>away from it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil is laid on the mark by the rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mark lies the centre-to-edge length away, by tape along the skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mark lies where one sees it looking straight down past the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nearest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mark lies on the skin nearest to the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the lesson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The vertex is off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The vertex is marked in the wrong place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tape is misread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One length is read too long or too short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil is turned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another marking rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marked by one rule, laid by another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cap has slipped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The marks are on the cap, and it sits in another place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A look from aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The eye looks past the coil&apos;s edge at the mark, off the axis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slid by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cap is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slid forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its brim comes down over the forehead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slid back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its brim goes up the forehead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slid to the patient&apos;s left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its brim comes down over the left ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slid to the patient&apos;s right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its brim comes down over the right ear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turned to the patient&apos;s left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its arrow passes left of the nose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turned to the patient&apos;s right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its arrow passes right of the nose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off the coil&apos;s axis by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The eye looks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stands before the coil&apos;s front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stands on the handle&apos;s side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the coil, seen from its handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The angle is wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hair lies under it, or a wing is lifted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Misread by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil is turned about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its edge mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The edge stays on its mark, the centre moves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The centre stays on the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To a larger angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To a smaller angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What keeps it off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hair or air under it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All of the coil lies further off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its left wing is lifted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left as seen from its handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its right wing is lifted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right as seen from its handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lifted by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coil is not on the skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it, and choose a second</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two things go wrong at once: the next one you choose comes on top of this one</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::WorkBar</name>
    <message>
        <source>Progress of the work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Worksheet</name>
    <message>
        <source>Worksheet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
