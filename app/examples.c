#include "examples.h"

#include <string.h>

/* Sizes within what is commonly built, chosen so that of the findings notes alone are left.  Claws of 7.5 mm
 * end short of the head's collar, which the default's 8 mm don't quite. */

static const char *const as_it_comes[] = { NULL };

static const char *const twelve_inch[] = {
  "scale.length=660",
  "nut.width=33",
  "strings.set=D4 0.279 p; B3 0.305 p; G3 0.356 p; D3 0.559 w 0.305; G4 0.254 p short",
  "neck.wood=walnut_black",
  "neck.board_wood=maple_hard",
  "rim.outer_diameter=304",
  "rim.height=66",
  "rim.segments=8",
  "rim.course_thickness=20; 25; 25",
  "rim.course_wood=maple_hard; walnut_black; walnut_black",
  "head.nominal=304.8",
  "hooks.count=22",
  "hooks.claw=7.5",
  "bridge.offset=52",
  "tailpiece.anchor=70",
  NULL,
};

/* The default's pot: three frets more at the nut end, tuned three semitones lower. */
static const char *const long_neck[] = {
  "scale.length=774",
  "frets.count=22",
  "fifth.start_fret=8",
  "strings.set=B3 0.279 p; G#3 0.305 p; E3 0.381 p; B2 0.61 w 0.33; E4 0.279 p short",
  "neck.thickness_first=22",
  "neck.thickness_last=25",
  "neck.wood=mahogany_honduras",
  "hooks.claw=7.5",
  NULL,
};

/* Seventeen frets: at a longer scale the first string comes too near to breaking. */
static const char *const tenor[] = {
  "scale.length=540",
  "frets.count=17",
  "nut.width=31",
  "strings.set=A4 0.229 p; D4 0.33 p; G3 0.508 w 0.254; C3 0.762 w 0.356",
  "rim.outer_diameter=253.4",
  "rim.segments=8",
  "rim.course_wood=maple_hard; ash_white; ash_white",
  "rim.course_turn=0.4",
  "head.nominal=254",
  "hooks.count=16",
  "hooks.heel_gap=18",
  "hooks.claw=7.5",
  "bridge.height=15",
  "bridge.offset=50",
  "bridge.spread=36",
  "bridge.foot_spread=54",
  "tailpiece.anchor=55",
  NULL,
};

static const char *const banjo_ukulele[] = {
  "scale.length=350",
  "frets.count=16",
  "nut.width=35",
  "strings.set=A4 0.279 p; E4 0.356 p; C4 0.483 w 0.229; G4 0.305 p",
  "neck.heel_start=40",
  "neck.rod_present=no",
  "headstock.length=130",
  "rim.outer_diameter=202.4",
  "rim.wall=12",
  "rim.height=50",
  "rim.segments=8",
  "rim.course_thickness=18; 18; 18",
  "rim.course_wood=cherry_black; cherry_black; cherry_black",
  "head.nominal=203.2",
  "hooks.count=14",
  "hooks.claw=7.5",
  "hooks.nut_height=8",
  "hooks.spare=2",
  "shoes.height=12",
  "shoes.below_edge=25",
  "joint.rod_count=1",
  "joint.heel_depth=46",
  "bridge.height=13",
  "bridge.offset=22",
  "bridge.spread=38",
  "bridge.foot_spread=46",
  "bridge.feet=2",
  "tailpiece.anchor=50",
  "setup.action=2",
  NULL,
};

static const char *const fretless[] = {
  "scale.length=700",
  "frets.count=0",
  "nut.string_height=0.8",
  "strings.set=C4 0.279 p; A3 0.305 p; F3 0.356 p; C3 0.559 w 0.305; F4 0.254 p short",
  "neck.rod_present=no",
  "rim.outer_diameter=329.4",
  "rim.wall=9.6",
  "rim.height=76",
  "rim.construction=plies",
  "rim.course_thickness=80",
  "rim.course_wood=ash_white",
  "rim.ply_thickness=3.6",
  "rim.ply_scarf=45",
  "rim.turning_allowance=0.6",
  "head.nominal=330.2",
  "head.material=skin",
  "head.thickness=0.35",
  "head.density=1200",
  "head.tension=4500",
  "hoop.clearance=1",
  "hooks.count=22",
  "hooks.claw=7.5",
  "joint.kind=stick",
  "bridge.height=15",
  "bridge.offset=50",
  "tailpiece.anchor=75",
  "setup.action=3",
  NULL,
};

/* The board is thick enough for the tube's groove under the fret slots. */
static const char *const left_handed[] = {
  "build.handed=left",
  "scale.length=667",
  "frets.count=21",
  "fretboard.thickness=6",
  "fifth.route=tunnel",
  "rim.construction=staves",
  "rim.segments=16",
  "rim.course_thickness=68",
  "rim.course_wood=maple_hard",
  "hoop.seat=groove",
  "hooks.claw=7.5",
  "bridge.offset=40",
  NULL,
};

static const char *const six_string[] = {
  "scale.length=640",
  "nut.width=44",
  "strings.set=E4 0.254 p; B3 0.33 p; G3 0.432 p; D3 0.66 w 0.356; A2 0.864 w 0.406; E2 1.118 w 0.457",
  "rim.outer_diameter=304",
  "rim.height=66",
  "rim.segments=8",
  "rim.course_thickness=20; 25; 25",
  "head.nominal=304.8",
  "head.tension=7500",
  "hooks.count=22",
  "hooks.claw=7.5",
  "hooks.tail_gap=40",
  "bridge.offset=40",
  "bridge.spread=54",
  "bridge.foot_spread=70",
  "tailpiece.anchor=75",
  "tailpiece.height=6",
  "tailpiece.width=54",
  NULL,
};

const RwExample rw_examples[] = {
  { "default", "",
    "Open back with an 11 inch head and 19 frets; what a new build begins with",
    "", as_it_comes, NULL },
  { "twelve-inch", "Twelve-inch open back",
    "Open back with a 12 inch head, in maple and walnut",
    "For singing in the kitchen with the windows open: a wide head, a little more room at the nut, and "
    "walnut left over from a table top.", twelve_inch, NULL },
  { "long-neck", "Long neck",
    "Three frets more at the nut; the short string starts at the 8th",
    "For a low voice that wants E without a change of strings; a capo at the 3rd fret brings back the "
    "usual G. Mahogany keeps the long neck light.", long_neck, NULL },
  { "tenor", "Tenor for the dance band",
    "Four strings in fifths, 17 frets, 10 inch head",
    "Tuned as a viola, to be played with a plectrum and to fit under the seat of a bus.", tenor, NULL },
  { "banjo-ukulele", "Banjo-ukulele from offcuts",
    "Four strings, 16 frets, 8 inch head, no truss rod",
    "Made of what the first rim left of its boards: three courses of cherry and light steel strings.",
    banjo_ukulele, NULL },
  { "fretless", "Fretless on a bent rim",
    "No frets; skin on a deep thin 13 inch rim of three plies, on a stick",
    "For slow tunes in F, the old way: ash bent over a drum, a long neck strung low, and no frets to buzz "
    "on a damp porch.", fretless, NULL },
  { "left-handed", "Left-handed with a tunnel",
    "Mirror image; stave rim, 21 frets, short string through a tunnel",
    "For a left-handed beginner who lays the thumb over the neck: no peg stands in its way at the 5th "
    "fret.", left_handed, NULL },
  { "six-string", "Six strings on one pot",
    "Tuned as a guitar; wide neck, 12 inch head",
    "For a guitarist who is asked for a banjo twice a year and will not learn another fingering.",
    six_string, NULL },
  { "as-built", "The first one, as it came out",
    "The built-in build from first cut to strung, with what was measured and made on the way",
    "One winter in a shed, and little came out as planned: the band of the head measures large, the courses came "
    "out thin and the rim small, the hoop opened, the wedge at the heel slipped, the board was planed thinner. "
    "Each was measured before the next part was cut, a higher bridge took up the rest, and it plays.",
    as_it_comes, rw_example_built },
};

const int rw_examples_count = G_N_ELEMENTS (rw_examples);

const RwExample *
rw_example_find (const char *name)
{
  for (int i = 0; i < rw_examples_count; i++)
    if (strcmp (rw_examples[i].name, name) == 0)
      return &rw_examples[i];
  return NULL;
}

static void
replace_text (char **text, const char *other)
{
  g_free (*text);
  *text = g_strdup (other);
}

RwProject *
rw_example_project (const RwExample *example)
{
  RwProject *project = rw_project_new ();

  replace_text (&project->name, example->title);
  replace_text (&project->notes, example->notes);
  for (int i = 0; example->settings[i] != NULL; i++)
    {
      g_auto (GStrv) parts = g_strsplit (example->settings[i], "=", 2);
      int id = rw_param_find (parts[0]);
      g_autoptr (GError) error = NULL;

      if (id < 0 || !rw_design_read (&project->design, (RwParamId) id, parts[1], RW_STYLE_FILE, &error))
        g_error ("example %s: %s", example->name, example->settings[i]);
    }
  if (example->events != NULL)
    rw_example_happen (project, example->events);
  return project;
}

char *
rw_examples_overview (void)
{
  GString *text = g_string_new ("Builds to choose from:\n");

  for (int i = 0; i < rw_examples_count; i++)
    g_string_append_printf (text, "  %-14s %s\n", rw_examples[i].name, rw_examples[i].summary);
  return g_string_free (text, FALSE);
}
