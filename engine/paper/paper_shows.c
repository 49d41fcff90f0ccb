#include "paper_shows.h"

#include <string.h>

#define RIM "build.handed rim.outer_diameter rim.wall rim.height rim.crest_inset rim.tone_ring_*"
#define COURSES "rim.construction rim.segments rim.segment.* rim.strip_width rim.course* rim.ply* rim.stave.*"
#define HOLES "hooks.count hooks.angle* hooks.arc* shoes.below_edge shoes.bolt_hole shoes.hole_below_edge joint.*"
#define BOARD                                                                                                  \
  "build.handed scale.* nut.* frets.* fretboard.* fifth.* strings.nut_y* strings.start_y* neck.width* "        \
  "neck.board_length neck.side_angle neck.offset_at_nut neck.nut_to_rim"
#define PROFILE "neck.thickness* neck.facet* neck.section neck.rod_* neck.heel_start fretboard.thickness"

const RwPaperContent rw_paper_contents[] = {
  { "general", RIM " " HOLES " " BOARD " " PROFILE " head.* hoop.* hooks.* shoes.* bridge.* tailpiece.* "
                   "headstock.* neck.angle neck.set_height strings.bridge_y*" },
  { "steps", "head.* rim.* hoop.* hooks.* shoes.* neck.* joint.* headstock.* fretboard.* frets.* nut.* fifth.* "
             "bridge.height tailpiece.width setup.action* setup.relief" },
  { "shopping", "rim.* neck.blank_* neck.wood neck.board_wood neck.board_length neck.width* fretboard.thickness "
                "frets.count frets.wire_total head.nominal head.material hoop.* hooks.* shoes.* joint.* strings.set "
                "headstock.* nut.* bridge.* finish.flake" },
  { "segment", COURSES " rim.outer_diameter rim.wall rim.turning_allowance" },
  { "ring", COURSES " rim.outer_diameter rim.wall rim.turning_allowance" },
  { "rim-plan", RIM " " HOLES " head.* hoop.* tailpiece.width neck.width_at_rim" },
  { "rim-strip", RIM " " HOLES " rim.circumference tailpiece.width neck.width_at_rim hooks.chord*" },
  { "pot", RIM " rim.course_thickness head.* hoop.* hooks.* shoes.*" },
  { "hooks-hoop", "hoop.* hooks.*" },
  { "neck-plan", BOARD " headstock.* neck.facet* neck.heel_start neck.rod_*" },
  { "neck-side", PROFILE " " RIM " neck.angle neck.set_height neck.nut_to_rim neck.board_length headstock.* nut.* "
                         "joint.* hoop.outer_diameter" },
  { "sections", PROFILE " neck.width*" },
  { "heel", "build.handed neck.angle neck.side_angle neck.width_at_rim neck.set_height joint.* rim.outer_diameter "
            "hoop.outer_diameter hoop.travel head.collar fretboard.thickness" },
  { "headstock", "build.handed headstock.* nut.*" },
  { "fretboard", BOARD },
  { "scale-stick", "scale.* frets.position* frets.count frets.slots" },
  { "bridge-nut", "build.handed nut.* bridge.* strings.nut_y* strings.bridge_y*" },
};

const int rw_paper_contents_count = G_N_ELEMENTS (rw_paper_contents);

/* An id with an index written out is of its family: "hooks.arc[3]" of "hooks.arc". */
static gboolean
fits (const char *pattern, const char *id)
{
  gsize length = strlen (pattern);

  if (length > 0 && pattern[length - 1] == '*')
    return strncmp (pattern, id, length - 1) == 0;
  return strncmp (pattern, id, length) == 0 && (id[length] == '\0' || id[length] == '[');
}

static gboolean
fits_any (const char *patterns, const char *id)
{
  g_auto (GStrv) all = g_strsplit (patterns, " ", -1);

  for (int i = 0; all[i] != NULL; i++)
    if (fits (all[i], id))
      return TRUE;
  return FALSE;
}

gboolean
rw_paper_shows (const char *paper, const char *id)
{
  for (int i = 0; i < rw_paper_contents_count; i++)
    if (strcmp (rw_paper_contents[i].paper, paper) == 0)
      return fits_any (rw_paper_contents[i].patterns, id);
  return TRUE;
}
