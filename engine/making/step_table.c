#include "step.h"

#include <glib/gi18n-lib.h>

#define AFTER(step) RW_STEP_BIT (RW_STEP_##step)

#define SAW                                                                                                  \
  N_("Saws: eye and ear protection, push sticks, hands clear of the line of the cut; the saw maker’s "        \
     "manual comes first.")
#define DUST N_("Wood dust harms lungs: collect it at the tool and wear a mask; some woods irritate skin.")
#define STEAM N_("Steam scalds: vent the box, never heat it sealed, wear gloves and eye protection.")
#define LATHE                                                                                                \
  N_("Turning: full face shield, no gloves or loose sleeves, stand aside when starting, keep to the speed "   \
     "limit of the lathe’s manual.")
#define BRAZING                                                                                              \
  N_("Brazing: clear and ventilate the bench, no galvanised or plated metal, eye protection, water by; "      \
     "local fire rules apply.")
#define ROUTER                                                                                               \
  N_("Router: clamp the work, feed against the cutter, unplug it to change cutters; its manual comes first.")
#define FILINGS N_("Fret ends and filings are sharp: eye protection, and sweep up with a brush.")

/* ---- what builds differ in ---- */

static gboolean
segments (const RwDesign *used)
{
  return used->rim_construction == RW_RIM_SEGMENTS;
}

static gboolean
staves (const RwDesign *used)
{
  return used->rim_construction == RW_RIM_STAVES;
}

static gboolean
plies (const RwDesign *used)
{
  return used->rim_construction == RW_RIM_PLIES;
}

static gboolean
tone_ring (const RwDesign *used)
{
  return used->rim_tone_ring_height > 0 || used->rim_tone_ring_rod > 0;
}

static gboolean
bare_edge (const RwDesign *used)
{
  return !tone_ring (used);
}

static gboolean
notches (const RwDesign *used)
{
  return used->hoop_seat == RW_SEAT_NOTCHES;
}

static gboolean
groove (const RwDesign *used)
{
  return !notches (used);
}

static gboolean
truss_rod (const RwDesign *used)
{
  return used->neck_rod_present == RW_YES;
}

static gboolean
no_truss_rod (const RwDesign *used)
{
  return !truss_rod (used);
}

static gboolean
frets (const RwDesign *used)
{
  return used->frets_count > 0;
}

static gboolean
fretless (const RwDesign *used)
{
  return !frets (used);
}

static gboolean
short_string (const RwDesign *used)
{
  return used->strings_set.at[used->strings_set.count - 1].is_short;
}

static gboolean
tunnel (const RwDesign *used)
{
  return short_string (used) && used->fifth_route == RW_ROUTE_TUNNEL;
}

static gboolean
side_peg (const RwDesign *used)
{
  return short_string (used) && !tunnel (used);
}

static gboolean
rods (const RwDesign *used)
{
  return used->joint_kind == RW_JOINT_RODS;
}

static gboolean
stick (const RwDesign *used)
{
  return !rods (used);
}

static gboolean
film (const RwDesign *used)
{
  return used->head_material == RW_HEAD_FILM;
}

static gboolean
skin (const RwDesign *used)
{
  return !film (used);
}

/* ---- the table ---- */

const RwStepInfo rw_step_infos[] = {
  { RW_STEP_CHOOSE, NULL, NULL, 0,
    N_("Head and hoop in hand, or their makers’ sizes."),
    N_("Settle head, scale, bridge and the fret at the rim; clear every stop among the findings before wood is cut."),
    NULL,
    "", "head.nominal head.band head.collar head.thickness" },
  { RW_STEP_STOCK, NULL, NULL, AFTER (CHOOSE),
    N_("Boards on the rack: their thickness says how many courses."),
    N_("Saw strips, neck blank and fretboard blank oversize by the lists; stack them in the shop until they "
       "move no more."),
    SAW,
    "", "" },

  /* The rim. */
  { RW_STEP_SEGMENTS, segments, NULL, AFTER (STOCK),
    N_("Strip width and thickness as planed; a trial ring in scrap that closes."),
    N_("Set the mitre by the trial ring, saw all segments to one stop, and number them."),
    SAW,
    "rim.strip_width", "" },
  { RW_STEP_SEGMENTS, staves, N_("Saw the staves"), AFTER (STOCK),
    N_("Stave thickness as planed; a trial ring in scrap that closes."),
    N_("Bevel both long edges by the trial ring, then cut to length."),
    SAW,
    "rim.strip_width", "" },
  { RW_STEP_SEGMENTS, plies, N_("Cut and scarf the plies"), AFTER (STOCK),
    N_("Ply thickness as planed."),
    N_("Cut plies to length, plane the scarfs, and bend them hot and wet round the form."),
    STEAM,
    "rim.ply_thickness", "" },
  { RW_STEP_COURSES, segments, NULL, AFTER (SEGMENTS),
    N_("A flat caul, the ring sheet, and clamps that go round."),
    N_("Glue half rings, true their ends together, join the halves, then flatten both faces."),
    DUST,
    "", "rim.course_thickness[k]" },
  { RW_STEP_COURSES, staves, N_("Glue the staves"), AFTER (SEGMENTS),
    N_("A flat caul, the ring sheet, and clamps that go round."),
    N_("Glue halves, true their edges together, join the halves, then square the faces."),
    DUST,
    "", "" },
  { RW_STEP_COURSES, plies, N_("Laminate the plies"), AFTER (SEGMENTS),
    N_("Plies dry and to shape; a form true to the rim."),
    N_("Glue ply on ply, scarfs apart from each other all round."),
    DUST,
    "", "" },
  { RW_STEP_STACK, segments, NULL, AFTER (COURSES),
    N_("Each course flat; its thickness as made written down."),
    N_("Glue course on course, each turned so that its joints miss those below; true the last before adding the next."),
    NULL,
    "rim.course_thickness[k]", "rim.blank_height" },
  { RW_STEP_TURN, NULL, NULL, AFTER (COURSES) | AFTER (STACK),
    N_("Bore of the head’s band, measured; hole schedule against glue lines."),
    N_("Turn outside, inside and faces; try the head on while the rim is still on its plate."),
    LATHE,
    "head.nominal head.band", "rim.outer_diameter rim.wall rim.height" },
  { RW_STEP_EDGE, bare_edge, NULL, AFTER (TURN),
    N_("Rim turned to size and dry."),
    N_("Shape the bearing edge, check it on a flat plate with a light behind, and ease its inside."),
    DUST,
    "", "rim.crest_inset" },
  { RW_STEP_EDGE, tone_ring, N_("Fit the tone ring and shape its seat"), AFTER (TURN),
    N_("Ring rolled and joined first, its height and rod measured."),
    N_("Fit the groove to the ring, or the ring to the groove; check ring and edge on a flat plate with a "
       "light behind."),
    DUST,
    "rim.tone_ring_rod", "rim.tone_ring_height rim.crest_inset" },
  { RW_STEP_HOOP, notches, NULL, AFTER (TURN),
    N_("Rim and head as made; one test bend; the hook places, as the notches fix them for good."),
    N_("Correct the former by the test bend, bend, cut, join, round over and file the notches."),
    BRAZING,
    "rim.outer_diameter head.nominal head.band hoop.springback_test",
    "hoop.thickness hoop.height hoop.notch_depth" },
  { RW_STEP_HOOP, groove, NULL, AFTER (TURN),
    N_("Rim and head as made; one test bend."),
    N_("Correct the former by the test bend, bend, cut, join and round over."),
    BRAZING,
    "rim.outer_diameter head.nominal head.band hoop.springback_test", "hoop.thickness hoop.height" },

  /* The neck. */
  { RW_STEP_NECK_BLANK, truss_rod, NULL, AFTER (STOCK),
    N_("Rod in hand; nut to rim; headstock angle."),
    N_("Square the blank, draw the centre line all round, cut the channel and the headstock’s slope."),
    ROUTER,
    "", "neck.rod_width neck.rod_depth headstock.angle" },
  { RW_STEP_NECK_BLANK, no_truss_rod, NULL, AFTER (STOCK),
    N_("Nut to rim; headstock angle."),
    N_("Square the blank, draw the centre line all round, and cut the headstock’s slope."),
    SAW,
    "", "headstock.angle" },
  { RW_STEP_HEEL, NULL, NULL, AFTER (NECK_BLANK) | AFTER (EDGE) | AFTER (HOOP),
    N_("Rim outside, ring height and hoop as made; neck angle and sideways angle as they are needed now."),
    N_("Cut the heel’s face with the wedge while the blank is square, hollow it, and relieve it for the hoop."),
    SAW,
    "rim.outer_diameter rim.tone_ring_height hoop.outer_diameter", "neck.angle neck.side_angle" },
  { RW_STEP_HEADSTOCK, NULL, NULL, AFTER (NECK_BLANK),
    N_("Tuners in hand: bushing, housing, grip; thickness of the nut."),
    N_("Glue ears and overlay, drill from the face into a backing board, then saw the outline."),
    NULL,
    "headstock.button nut.thickness", "headstock.post_hole headstock.thickness" },
  { RW_STEP_FRETBOARD, frets, NULL, AFTER (STOCK),
    N_("Scale, saw kerf, and one square edge for the nut."),
    N_("Mark every slot from the nut with a knife, saw while the board is square, then taper it."),
    DUST,
    "frets.tang_depth", "fretboard.thickness frets.slot_width nut.width" },
  { RW_STEP_FRETBOARD, fretless, N_("Plane and taper the fretboard"), AFTER (STOCK),
    N_("Scale, and one square edge for the nut."),
    N_("Plane it flat, scribe lines where they are wanted, then taper it."),
    DUST,
    "", "fretboard.thickness nut.width" },
  { RW_STEP_FIFTH, tunnel, N_("Lay the short string’s tunnel"), AFTER (NECK_BLANK) | AFTER (FRETBOARD),
    N_("The tube in hand; place of the rod and of the first posts."),
    N_("Bend and flatten the tube, lay it clear of the rod before the board goes on, and set the short string’s nut."),
    NULL,
    "fifth.tube_outer fifth.tube_wall", "fifth.tube_flatten fifth.spacing" },
  { RW_STEP_FRETS, frets, NULL, AFTER (NECK_BLANK) | AFTER (FRETBOARD) | AFTER (FIFTH),
    N_("Rod fitted and tested; the roughed neck has settled."),
    N_("Glue the board on its centre line, bind it, press the frets, dress and round them."),
    FILINGS,
    "", "frets.crown_height" },
  { RW_STEP_FRETS, fretless, N_("Glue the fretboard"), AFTER (NECK_BLANK) | AFTER (FRETBOARD) | AFTER (FIFTH),
    N_("Rod fitted and tested; the roughed neck has settled."),
    N_("Glue the board on its centre line, bind it, and true its face."),
    NULL,
    "", "fretboard.thickness" },
  { RW_STEP_CARVE, NULL, NULL, AFTER (FRETS) | AFTER (HEEL) | AFTER (HEADSTOCK),
    N_("Gauges cut out; depth of the channel at each station."),
    N_("Plane the depth along the back, then first facets, then second, then round; stop at headstock and heel."),
    N_("Carve away from the hand that holds; clamp the neck."),
    "neck.rod_depth", "neck.thickness_first neck.thickness_last" },
  { RW_STEP_FIFTH, side_peg, NULL, AFTER (FRETS) | AFTER (CARVE),
    N_("The peg’s sleeve; the side as carved; place of the rod."),
    N_("Drill for the peg clear of the rod, ream it last, and set the short string’s nut."),
    NULL,
    "", "fifth.spacing fifth.peg_distance" },

  /* The pot, to the neck. */
  { RW_STEP_FIT, rods, NULL, AFTER (HEEL) | AFTER (EDGE) | AFTER (FRETS),
    N_("Rim sanded to size; heel face eased."),
    N_("Mark the rim from the neck, find the tail by halving the circumference, drill, and draw the joint up."),
    NULL,
    "neck.angle rim.outer_diameter", "joint.rod_upper joint.hole_on_rim[k] neck.set_height" },
  { RW_STEP_FIT, stick, N_("Fit the stick and the neck to the rim"), AFTER (HEEL) | AFTER (EDGE) | AFTER (FRETS),
    N_("Rim sanded to size; heel face eased; stick planed square."),
    N_("Cut the rim’s holes for the stick, level with the head plane, find the tail by halving the circumference, "
       "and wedge the joint up."),
    NULL,
    "neck.angle rim.outer_diameter", "joint.stick_below neck.set_height" },
  { RW_STEP_SHOES, notches, NULL, AFTER (FIT) | AFTER (HOOP),
    N_("Tape round the rim; heel and tailpiece drawn on it; the hoop’s notches."),
    N_("Wrap the strip, hold it against the notches, prick through, drill with a block inside; drill and "
       "tap the shoes."),
    N_("Drilling metal: clamp the piece, never hold it by hand; eye protection."),
    "rim.circumference tailpiece.width", "shoes.stand_off shoes.below_edge shoes.bolt_hole" },
  { RW_STEP_SHOES, groove, NULL, AFTER (FIT) | AFTER (HOOP),
    N_("Tape round the rim; heel and tailpiece drawn on it."),
    N_("Wrap the strip, prick through, drill with a block inside; drill and tap the shoes."),
    N_("Drilling metal: clamp the piece, never hold it by hand; eye protection."),
    "rim.circumference tailpiece.width", "shoes.stand_off shoes.below_edge shoes.bolt_hole" },
  { RW_STEP_HOOKS, NULL, NULL, AFTER (HOOP) | AFTER (SHOES),
    N_("One hook bent and measured on the pot itself."),
    N_("Correct the cut by that hook, then cut, bend and thread the rest."),
    NULL,
    "hooks.rod shoes.stand_off hoop.height", "hooks.bend_radius" },

  /* The whole. */
  { RW_STEP_STRING_UP, film, NULL,
    AFTER (CARVE) | AFTER (FIFTH) | AFTER (FIT) | AFTER (SHOES) | AFTER (HOOKS),
    N_("All parts, unfinished."),
    N_("Assemble dry, tighten the head by eighths of a turn round the rim, string up, and correct angle and "
       "side line."),
    N_("Strings and head are under load and can let go: eye protection, face away while tuning up."),
    "neck.set_height", "bridge.height head.tap_frequency setup.action[n]" },
  { RW_STEP_STRING_UP, skin, NULL,
    AFTER (CARVE) | AFTER (FIFTH) | AFTER (FIT) | AFTER (SHOES) | AFTER (HOOKS),
    N_("All parts, unfinished; the skin soaked and tucked on its flesh hoop."),
    N_("Draw the wet skin down evenly and let it dry for a day; tighten by eighths of a turn round the rim, string up, "
       "and correct angle and side line."),
    N_("Strings and head are under load and can let go: eye protection, face away while tuning up."),
    "neck.set_height", "bridge.height head.tap_frequency setup.action[n]" },
  { RW_STEP_FINISH, NULL, NULL, AFTER (STRING_UP),
    N_("Everything fits and has been apart once."),
    N_("Ream pegs last; allow for the film in every hole."),
    N_("Solvents burn and their fumes harm: ventilate, no flame, oily or wet rags laid out flat outdoors; "
       "read the maker’s sheet."),
    "", "" },
  { RW_STEP_SET_UP, NULL, NULL, AFTER (FINISH),
    N_("Head at its tension for some days; tuned to pitch."),
    N_("Relief, then nut slots, then bridge height and place, then compensation by ear and by the list."),
    NULL,
    "", "setup.relief nut.string_height setup.action[n]" },
};

const int rw_step_infos_count = G_N_ELEMENTS (rw_step_infos);
