#include "check.h"

/* The rod's channel and the wood round it. */
static void
check_channel (RwCheck *check)
{
  const RwDesign *used = check->used;
  const RwPlan *plan = &check->result->plan;
  double under = check->at[RW_NECK_UNDER_ROD], start = fmax (used->neck_rod_start, 0.0);
  double centre = rw_plan_centre (plan, start);
  double half = fmin (rw_plan_treble (plan, start) - centre, centre - rw_plan_bass (plan, start));
  double beside = half - used->neck_rod_width / 2.0;

  if (used->neck_rod_present == RW_NO)
    return;
  rw_check_add (check, rw_check_low (under, used->limits_under_rod_least, used->limits_under_rod, RW_NEVER),
                "neck.under_rod", "neck.rod_depth neck.thickness_first neck.section neck.under_rod",
                under < 0.0 ? N_("The rod's channel goes through the back of the neck by {1 mm}. A thicker "
                                 "or squarer neck or a shallower rod helps.")
                            : N_("The rod's channel leaves {1 mm} of wood to the back of the neck at its "
                                 "thinnest; common practice keeps {2 mm} and never under {3 mm}. A thicker "
                                 "or squarer neck or a shallower rod helps."),
                fabs (under), used->limits_under_rod, used->limits_under_rod_least);
  rw_check_add (check, rw_check_low (beside, 0.0, used->limits_beside_rod, RW_NEVER),
                "neck.beside_rod", "neck.rod_width nut.width neck.rod_start",
                N_("Beside the channel {1 mm} of wood are left where it starts; common practice keeps "
                   "{2 mm}. A wider nut or a narrower rod helps."),
                beside, used->limits_beside_rod);
}

static void
check_relief (RwCheck *check)
{
  const RwDesign *used = check->used;
  const RwSide *side = &check->result->side;
  double free = check->at[RW_NECK_RELIEF_UNRODDED], wanted = used->setup_relief;
  double most = fmax (used->limits_relief, wanted);

  if (side->outcome != RW_SIDE_SOLVED)
    return;
  if (used->neck_rod_present == RW_YES)
    rw_check_add (check, side->relief_reached ? RW_FINE : RW_CAUTION,
                  "neck.relief_not_reached", "setup.relief neck.rod_end neck.rod_start neck.relief_unrodded",
                  N_("The rod's channel is too short to bring the relief of {1 mm} down to {2 mm}, however "
                     "hard it is turned. Make the channel longer or the neck stiffer."),
                  free, wanted);
  else
    rw_check_add (check, rw_check_high (free, RW_NEVER, most, wanted + RW_RELIEF_ROOM),
                  "neck.rod_missing",
                  "neck.rod_present neck.thickness_first setup.relief neck.relief_unrodded",
                  N_("The strings bow the neck by {1 mm} where {2 mm} is wanted, and wood creeps on for "
                     "months. Fit a rod, make the neck thicker, or plane the board to meet it."),
                  free, wanted);
}

static void
check_depth (RwCheck *check)
{
  const RwDesign *used = check->used;
  double first = check->at[RW_NECK_THICKNESS + 1], last = used->neck_thickness_last;
  double wood = fmin (used->neck_thickness_first, last) - used->fretboard_thickness;

  rw_check_add (check, rw_check_low (wood, 0.0, RW_NEVER, RW_NEVER),
                "neck.no_wood", "neck.thickness_first fretboard.thickness",
                N_("The board is {1 mm} thicker than the whole neck. Make the neck thicker."),
                -wood);
  rw_check_add (check, rw_check_low (first, RW_NEVER, used->limits_neck_thin, RW_NEVER),
                "neck.thin", "neck.thickness_first neck.thickness[1]",
                N_("The neck is {1 mm} thick at the first fret; 14 to 19 mm is common, and a thinner one "
                   "bends and breaks there. One more pass of the rasp is easily too many."),
                first);
  rw_check_add (check, rw_check_high (first, RW_NEVER, RW_NEVER, used->limits_neck_thick),
                "neck.thick", "neck.thickness_first neck.thickness[1]",
                N_("The neck is {1 mm} thick at the first fret, more than most hands like; 14 to 19 mm is "
                   "common."),
                first);
  rw_check_add (check, last < used->neck_thickness_first ? RW_NOTE : RW_FINE,
                "neck.taper_reversed", "neck.thickness_last neck.thickness_first",
                N_("The neck grows thinner toward the heel, from {1 mm} to {2 mm}. Necks usually grow "
                   "thicker."),
                used->neck_thickness_first, last);
}

static void
check_board (RwCheck *check)
{
  const RwDesign *used = check->used;
  double board = used->fretboard_thickness, pitch = check->at[RW_STRINGS_NUT_PITCH];

  rw_check_add (check, rw_check_low (board, RW_NEVER, used->limits_board_thin, RW_NEVER),
                "board.thin", "fretboard.thickness",
                N_("A board of {1 mm} is thin: common practice has {2 mm} to {3 mm}."),
                board, used->limits_board_thin, used->limits_board_thick);
  rw_check_add (check, rw_check_high (board, RW_NEVER, RW_NEVER, used->limits_board_thick),
                "board.thick", "fretboard.thickness",
                N_("A board of {1 mm} is thick: {2 mm} to {3 mm} is common, and more looks heavy."),
                board, used->limits_board_thin, used->limits_board_thick);
  rw_check_add (check, rw_check_low (used->nut_edge_margin, RW_NEVER, used->limits_edge_margin, RW_NEVER),
                "board.edge_margin", "nut.edge_margin",
                N_("The outer strings run {1 mm} inside the board's edges; under {2 mm} the thumb pulls the "
                   "short string off, and so does any push at the first."),
                used->nut_edge_margin, used->limits_edge_margin);
  rw_check_add (check, rw_check_low (pitch, 0.0, used->limits_nut_pitch, RW_NEVER),
                "nut.pitch", "nut.width nut.edge_margin strings.nut_pitch",
                N_("The strings stand {1 mm} apart at the nut; about 8.5 mm is usual and most hands find "
                   "{2 mm} cramped. Make the nut wider."),
                pitch, used->limits_nut_pitch);
}

static void
check_slots (RwCheck *check)
{
  const RwDesign *used = check->used;
  double floor = check->at[RW_FRETS_FLOOR], room = check->at[RW_FRETS_SLOT_DEPTH] - used->frets_tang_depth;
  gboolean out = room < used->limits_slot_room - RW_CHECK_SLACK
                 || room > used->limits_slot_room_most + RW_CHECK_SLACK;

  rw_check_add (check, rw_check_low (floor, RW_STOP_FLOOR, used->limits_fret_floor, RW_NEVER),
                "frets.floor", "frets.tang_depth fretboard.thickness frets.floor",
                floor < 0.0 ? N_("The fret slots go {1 mm} deeper than the board is thick. Take a thicker "
                                 "board or wire with a shorter tang.")
                            : N_("Under the fret slots {1 mm} of the board are left; common practice keeps "
                                 "{2 mm}, or the board breaks at a slot and the saw marks the neck. Take a "
                                 "thicker board or wire with a shorter tang."),
                fabs (floor), used->limits_fret_floor);
  rw_check_add (check, out ? RW_CAUTION : RW_FINE,
                "frets.slot_room", "frets.slot_depth frets.tang_depth",
                N_("The slots are {1 mm} deeper than the tang; {2 mm} to {3 mm} lets the crown seat on the "
                   "board without weakening it."),
                room, used->limits_slot_room, used->limits_slot_room_most);
}

static void
check_slot_width (RwCheck *check)
{
  const RwDesign *used = check->used;
  double off = used->frets_slot_width - used->frets_tang_width;

  if (used->frets_count > 0.0)
    rw_check_add (check, rw_check_high (fabs (off), RW_NEVER, used->limits_slot_fit, RW_NEVER),
                  "frets.slot_width", "frets.slot_width frets.tang_width",
                  off > 0.0 ? N_("The slots are {1 mm} wider than the tang; beyond {2 mm} the barbs find no "
                                 "wood and the frets lift. Saw thinner, or glue them in.")
                            : N_("The slots are {1 mm} narrower than the tang; beyond {2 mm} the frets go in "
                                 "hard and bend the neck back. Saw wider, or file the tangs."),
                  fabs (off), used->limits_slot_fit);
}

static void
check_last_fret (RwCheck *check)
{
  const RwDesign *used = check->used;
  int last = (int) used->frets_count;
  double past = check->at[RW_NECK_BOARD_LENGTH] - check->result->plan.fret_x[last];

  if (last > 0)
    rw_check_add (check, rw_check_low (past, 0.0, used->limits_past_fret, RW_NEVER),
                  "frets.last_on_board", "frets.count neck.board_length bridge.offset rim.outer_diameter",
                  past < 0.0 ? N_("Fret {2} lies {1 mm} beyond the end of the board. Fewer frets, a bridge "
                                  "nearer the middle of the head or a smaller rim would make room: settle "
                                  "it before cutting the neck.")
                             : N_("The board ends {1 mm} past fret {2}, and {3 mm} is the least that holds "
                                  "it. Fewer frets, a bridge nearer the middle of the head or a smaller rim "
                                  "would make room: settle it before cutting the neck."),
                  fabs (past), last, used->limits_past_fret);
  if (last > 0)
    rw_check_add (check, used->setup_action_fret > last ? RW_NOTE : RW_FINE,
                  "setup.action_fret", "setup.action_fret frets.count",
                  N_("The action is asked for at fret {1}, and the board has {2}. It is counted at the "
                     "place where that fret would be."),
                  used->setup_action_fret, last);
}

/* Slots that were sawn out of place; those stepped off from fret to fret add their errors up. */
static void
check_fret_places (RwCheck *check)
{
  const RwPlan *plan = &check->result->plan;
  double most = 0.0, left = plan->length;
  int worst = 1;

  for (int n = 1; n <= plan->last; n++)
    {
      double off = plan->fret_x[n] - check->result->asked[RW_FRETS_POSITION + n];

      if (fabs (off) > fabs (most))
        {
          most = off;
          worst = n;
          left = plan->length - plan->fret_x[n];
        }
    }
  rw_check_add (check, rw_check_high (fabs (most), RW_NEVER, check->used->limits_fret_error, RW_NEVER),
                "frets.misplaced", "frets.position[{2}]",
                N_("Fret {2} lies {1 mm} from its place, which is {3 cent} out of tune. Measure every fret "
                   "from the nut, never from fret to fret; fill the slot and saw it again, or begin a new "
                   "board."),
                most, worst, 1200.0 * log2 ((left + most) / left));
}

void
rw_check_neck (RwCheck *check)
{
  check_channel (check);
  check_relief (check);
  check_depth (check);
  check_board (check);
  check_slots (check);
  check_slot_width (check);
  check_last_fret (check);
  check_fret_places (check);
}
