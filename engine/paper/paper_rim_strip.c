#include "paper_parts.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* A strip of paper to wrap round the turned rim, its head edge on the wood's top edge, its ends meeting on
 * the neck's centre line.  It is seen as it lies on the rim, from outside: with the head side up, the way
 * from the neck to the treble side then runs to the left.  So x is minus the arc from the neck, y minus the
 * depth below the wood's top edge. */

typedef struct
{
  RwDraft *draft;
  double length, height;
  double stretch; /* of arcs, where a tape says other than the diameter */
} Strip;

static RwPoint
on_strip (const Strip *strip, double arc, double depth)
{
  return (RwPoint){ -arc * strip->stretch, -depth };
}

static double
value (const Strip *strip, RwSlot slot)
{
  return rw_draft_value (strip->draft, slot);
}

static double
radius (const Strip *strip)
{
  return strip->draft->design->rim_outer_diameter / 2;
}

static void
draw_edges (const Strip *strip)
{
  RwDraft *draft = strip->draft;

  rw_draft_slot (draft, RIM, RW_RIM_CIRCUMFERENCE);
  rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_PAPER, -strip->length, -strip->height, 0, 0),
           N_ ("Rim strip"), 0);
}

/* ---- what the wood is built of ---- */

static void
draw_joint (const Strip *strip, int joint, double turn, double top, double foot)
{
  int count = (int)strip->draft->design->rim_segments;
  double angle = fmod ((joint + 0.5) * 360 / count + turn, 360) * G_PI / 180;
  double x = on_strip (strip, angle * radius (strip), 0).x;

  rw_sheet_line (strip->draft->sheet, RW_PEN_GRAIN, x, -top, x, -foot);
}

static void
draw_joints (const Strip *strip, double turn, double top, double foot)
{
  rw_draft_param (strip->draft, RIM, rim_segments);
  for (int j = 0; j < (int)strip->draft->design->rim_segments; j++)
    draw_joint (strip, j, turn, top, foot);
}

static void
draw_courses (const Strip *strip)
{
  RwDraft *draft = strip->draft;
  const RwLengthList *courses = &draft->design->rim_course_thickness;
  double top = 0;

  for (int k = 1; k <= courses->count && top < strip->height; k++)
    {
      double foot = fmin (top + courses->at[k - 1], strip->height);

      draw_joints (strip, value (strip, RW_RIM_COURSE_TURN + k), top, foot);
      rw_draft_param (draft, RIM, rim_course_thickness);
      if (foot < strip->height)
        rw_name (rw_sheet_line (draft->sheet, RW_PEN_EDGE, -strip->length, -foot, 0, -foot),
                 N_ ("Glue line under course"), k);
      top = foot;
    }
}

static void
draw_wood (const Strip *strip)
{
  if (strip->draft->design->rim_construction == RW_RIM_SEGMENTS)
    draw_courses (strip);
  else if (strip->draft->design->rim_construction == RW_RIM_STAVES)
    draw_joints (strip, 0, 0, strip->height);
}

/* ---- heel and tail ---- */

#define HEEL_CHORDS 24

/* One side of the heel as it covers the rim's face; side is 1 towards the treble. */
static void
draw_heel_side (const Strip *strip, double start, int side)
{
  RwDraft *draft = strip->draft;
  const RwDesign *design = draft->design;
  double over
      = design->neck_set_height + design->rim_tone_ring_height; /* of the board's surface over the wood */
  double foot = fmin (design->joint_heel_depth - over, strip->height);
  double off = rw_plan_centre (&draft->result->plan, draft->result->side.nut_to_rim);

  rw_draft_param (draft, JOINT, joint_heel_depth);
  rw_path_begin (draft->sheet, RW_PEN_PHANTOM, RW_TINT_NONE);
  for (int i = 0; i <= HEEL_CHORDS; i++)
    {
      double depth = foot * i / HEEL_CHORDS;
      double across = off + side * rw_heel_width (draft->result, depth + over) / 2;
      RwPoint at = on_strip (strip, radius (strip) * asin (across / radius (strip)), depth);

      if (i == 0)
        rw_path_move (draft->sheet, start + at.x, at.y);
      else
        rw_path_line (draft->sheet, start + at.x, at.y);
    }
  rw_path_line (draft->sheet, start, -foot);
  rw_name (rw_path_end (draft->sheet), N_ ("Heel"), 0);
}

static void
draw_tailpiece (const Strip *strip)
{
  RwDraft *draft = strip->draft;
  double half = strip->stretch * radius (strip) * asin (draft->design->tailpiece_width / 2 / radius (strip));
  double tail = -strip->length / 2;

  rw_draft_param (draft, STRINGS, tailpiece_width);
  for (int side = -1; side <= 1; side += 2)
    rw_name (rw_sheet_line (draft->sheet, RW_PEN_PHANTOM, tail + side * half, 0, tail + side * half,
                            -strip->height),
             N_ ("Edge of the tailpiece"), 0);
}

/* ---- holes ---- */

/* Half circles at the ends, which meet on the rim; crosses whole, so that both halves can be pricked. */
static void
draw_rod_hole (const Strip *strip, RwPoint at, double half, int number)
{
  RwDraft *draft = strip->draft;

  if (draft->design->joint_kind == RW_JOINT_STICK)
    rw_name (rw_sheet_box (draft->sheet, RW_PEN_OUTLINE, RW_TINT_NONE, at.x - half, at.y - half, at.x + half,
                           at.y + half),
             N_ ("Stick"), 0);
  rw_paper_hole (draft, at, draft->design->joint_kind == RW_JOINT_STICK ? half / 3 : half, N_ ("Rod hole"),
                 number);
}

/* The row of the upper hole across the pot, or of the stick. */
static RwSlot
first_across (const RwDraft *draft)
{
  return draft->design->joint_kind == RW_JOINT_STICK ? RW_JOINT_STICK_ON_RIM
                                                     : (RwSlot)(RW_JOINT_HOLE_ON_RIM + 1);
}

static void
draw_rod_holes (const Strip *strip)
{
  RwDraft *draft = strip->draft;
  gboolean stick = draft->design->joint_kind == RW_JOINT_STICK;
  RwAcross across = rw_across (draft->design);
  const double ends[] = { 0, -strip->length / 2, -strip->length };

  for (int k = 1; k <= across.count; k++)
    {
      RwSlot slot = (RwSlot)(first_across (draft) + k - 1);

      rw_draft_set (draft, RW_LAYER_JOINT, RW_SUBJECT_SLOT (slot));
      for (guint i = 0; i < G_N_ELEMENTS (ends); i++)
        draw_rod_hole (strip, (RwPoint){ ends[i], -value (strip, slot) }, across.half, stick ? 0 : k);
      rw_span_slot (draft, slot,
                    (RwSpan){ RW_MEASURE_VERTICAL,
                              { -strip->length / 2, -value (strip, slot) },
                              { -strip->length / 2, 0 },
                              k % 2 != 0 ? -12 : 12,
                              1,
                              NULL });
    }
}

/* Running figures under the holes are left out where holes stand too near to each other. */
#define FIGURE_ROOM 13.0

static void
draw_shoe_hole (const Strip *strip, int hook)
{
  RwDraft *draft = strip->draft;
  double arc = value (strip, RW_HOOKS_ARC + hook), hole = draft->design->shoes_bolt_hole / 2;
  RwPoint at = on_strip (strip, arc, value (strip, RW_SHOES_HOLE_BELOW_EDGE));
  g_autofree char *number = g_strdup_printf ("%d", hook), *figure = rw_paper_figure (draft, -at.x, 1);

  rw_draft_slot (draft, HOOKS, RW_HOOKS_ARC + hook);
  rw_paper_hole (draft, at, hole, N_ ("Shoe hole"), hook);
  rw_draft_slot (draft, TEXT, RW_HOOKS_ARC + hook);
  rw_sheet_text (draft->sheet, at.x, at.y + hole + 4, RW_ALIGN_MIDDLE, RW_LETTERS_LARGE, number);
  if (value (strip, RW_HOOKS_CHORD + hook) > FIGURE_ROOM)
    rw_sheet_text (draft->sheet, at.x, at.y - hole - 6.5, RW_ALIGN_MIDDLE, RW_LETTERS_SMALL, figure);
}

static void
draw_shoe_holes (const Strip *strip)
{
  int count = (int)strip->draft->design->hooks_count;
  double depth = value (strip, RW_SHOES_HOLE_BELOW_EDGE);
  RwPoint first = on_strip (strip, value (strip, RW_HOOKS_ARC + 1), depth);

  for (int k = 1; k <= count; k++)
    draw_shoe_hole (strip, k);
  rw_span_slot (strip->draft, RW_SHOES_HOLE_BELOW_EDGE,
                (RwSpan){ RW_MEASURE_VERTICAL, { first.x, -depth }, { first.x, 0 }, -9, 1, NULL });
}

/* ---- lettering ---- */

static void
draw_marks (const Strip *strip)
{
  RwDraft *draft = strip->draft;
  const double ends[] = { 0, -strip->length / 2, -strip->length }, count_from = -0.26 * strip->length;

  for (guint i = 0; i < G_N_ELEMENTS (ends); i++)
    {
      rw_draft_set (draft, RW_LAYER_AXES, RW_SUBJECT_NONE);
      rw_name (rw_sheet_line (draft->sheet, RW_PEN_CENTRE, ends[i], 9, ends[i], -strip->height - 7),
               i == 1 ? N_ ("Tail mark") : N_ ("Centre of the neck"), 0);
      rw_paper_mark (draft, (RwPoint){ ends[i], 0 }, 0, 1);
    }
  rw_paper_side (draft, (RwPoint){ -24, 3 }, 0, _("neck"));
  rw_paper_side (draft, (RwPoint){ -strip->length + 24, 3 }, 0, _("neck"));
  rw_paper_side (draft, (RwPoint){ -strip->length / 2 - 16, 3 }, 0, _("tail"));
  /* Short words: they are less likely to be cut by a seam. */
  for (int i = 0; i < 4; i++)
    {
      double middle = -strip->length * (0.14 + 0.24 * i);

      rw_paper_side (draft, (RwPoint){ middle, 3 }, 0, _("head side"));
      rw_paper_side (draft, (RwPoint){ middle, -strip->height - 6 }, 0, i < 2 ? _("treble") : _("bass"));
    }
  rw_paper_words (
      draft, (RwPoint){ -strip->length / 2 - draft->design->tailpiece_width / 2 - 10, -strip->height - 4 },
      _("tailpiece"));
  rw_paper_words (draft, (RwPoint){ -12, -strip->height - 4 }, _("heel"));
  rw_paper_arrow (draft, (RwPoint){ count_from + 15, 4 }, (RwPoint){ count_from - 15, 4 });
  rw_paper_words (draft, (RwPoint){ count_from, 5.5 }, _("hooks are counted this way"));
}

static void
write_depths (const Strip *strip, RwPoint *at)
{
  RwDraft *draft = strip->draft;
  g_autofree char *shoes = rw_paper_length (draft, value (strip, RW_SHOES_HOLE_BELOW_EDGE), 1);
  g_autofree char *across = rw_paper_length (draft, value (strip, first_across (draft)), 1);
  g_autofree char *second = rw_paper_length (draft, value (strip, (RwSlot)(RW_JOINT_HOLE_ON_RIM + 2)), 1);

  if (draft->design->joint_kind == RW_JOINT_STICK)
    rw_paper_print (draft, at, _("Below the wood's top edge: shoe holes %s, stick's axis %s."), shoes,
                    across);
  else if (draft->design->joint_rod_count < 1.5)
    rw_paper_print (draft, at, _("Below the wood's top edge: shoe holes %s, rod hole %s."), shoes, across);
  else
    rw_paper_print (draft, at, _("Below the wood's top edge: shoe holes %s, rod holes %s and %s."), shoes,
                    across, second);
}

#define STRETCH_TOLD 1e-5

/* Whether the strip is as long as the diameter says, or as a tape round the rim did. */
static void
write_stretch (const Strip *strip, RwPoint *at)
{
  RwDraft *draft = strip->draft;
  g_autofree char *planned = rw_paper_length (draft, 2 * G_PI * radius (strip), 1);
  g_autofree char *percent
      = rw_quantity_write (100 * (strip->stretch - 1), "%", RW_UNITS_MM, 2, draft->sheet->style.decimal);

  if (fabs (strip->stretch - 1) > STRETCH_TOLD)
    rw_paper_print (draft, at,
                    _("Stretched by %s %% to what the tape measured; the diameter alone would give %s."),
                    percent, planned);
  else
    rw_paper_line (draft, at, _("Not stretched: the length is that of the diameter."));
}

static void
write_notes (const Strip *strip)
{
  RwDraft *draft = strip->draft;
  g_autofree char *length = rw_paper_length (draft, strip->length, 1);
  RwPoint at
      = { draft->design->build_handed == RW_HANDED_LEFT ? 6 : -strip->length + 6, -strip->height - 20 };

  rw_paper_print (
      draft, &at,
      _("Seen from outside, head side up; the upper edge goes to the wood's top edge. Cut out, wrap round "
         "the turned and sanded rim, and let the ends meet on the neck's centre line. Length %s."),
      length);
  write_stretch (strip, &at);
  write_depths (strip, &at);
  rw_paper_line (draft, &at,
                 _("If the ends gap or lap, share the difference out evenly, or enter what a tape round "
                     "the rim says and print again."));
  rw_paper_line (
      draft, &at,
      _("Figures under the holes run round the rim from the neck. Mark the heel and the tailpiece first; "
          "prick through the crosses, then drill square to the face with a block inside."));
  rw_paper_line (draft, &at, _("Tape round the rim as made: ____________    Date: ____________"));
}

RwSheet *
rw_paper_rim_strip (const RwPaperJob *job)
{
  RwDraft draft = rw_paper_begin (job, _("Rim strip"));
  Strip strip = { &draft, rw_draft_value (&draft, RW_RIM_CIRCUMFERENCE), draft.design->rim_height, 1 };

  strip.stretch = strip.length / (2 * G_PI * radius (&strip));
  draw_edges (&strip);
  draw_wood (&strip);
  for (int side = -1; side <= 1; side += 2)
    draw_heel_side (&strip, side > 0 ? 0 : -strip.length, side);
  draw_tailpiece (&strip);
  draw_rod_holes (&strip);
  draw_shoe_holes (&strip);
  draw_marks (&strip);
  rw_paper_mirror_along (&draft);
  write_notes (&strip);
  return rw_paper_end (&draft);
}
