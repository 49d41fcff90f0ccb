#include "paper_column.h"

#include <math.h>

/* The steps of the making in order: what has to be known first, what to do, what can hurt, and blanks for
 * what came out.  Order and needs are common practice, no source. */

#define ALL (-1)

typedef struct
{
  RwStep step;
  int construction;  /* of the rim, or ALL */
  const char *title; /* NULL: the step's own */
  const char *needs, *work;
  const char *caution;  /* may be NULL */
  RwParamId measure[4]; /* read off what was made or bought; 0 ends them, as no first parameter is measured */
} Step;

#define SAW                                                                                                  \
  N_ ("Saws: eye and ear protection, push sticks, hands clear of the line of the cut; the saw maker's "      \
      "manual comes first.")
#define DUST N_ ("Wood dust harms lungs: collect it at the tool and wear a mask; some woods irritate skin.")

static const Step steps[] = {
  { RW_STEP_CHOOSE,
    ALL,
    NULL,
    N_ ("Head and hoop in hand, or their makers' sizes."),
    N_ ("Settle head, scale, bridge and the fret at the rim; clear every stop among the findings before wood "
        "is cut."),
    NULL,
    { RW_P_head_nominal, RW_P_head_band, RW_P_head_collar } },
  { RW_STEP_STOCK,
    ALL,
    NULL,
    N_ ("Boards on the rack: their thickness says how many courses."),
    N_ ("Saw strips, neck blank and fretboard blank oversize by the lists; stack them in the shop until they "
        "move no more."),
    SAW,
    { 0 } },
  { RW_STEP_SEGMENTS,
    RW_RIM_SEGMENTS,
    NULL,
    N_ ("Strip width and thickness as planed; a trial ring in scrap that closes."),
    N_ ("Set the mitre by the trial ring, saw all segments to one stop, and number them."),
    SAW,
    { RW_P_rim_strip_width } },
  { RW_STEP_SEGMENTS,
    RW_RIM_STAVES,
    N_ ("Saw the staves"),
    N_ ("Stave thickness as planed; a trial ring in scrap that closes."),
    N_ ("Bevel both long edges by the trial ring, then cut to length."),
    SAW,
    { RW_P_rim_strip_width } },
  { RW_STEP_SEGMENTS,
    RW_RIM_PLIES,
    N_ ("Cut and scarf the plies"),
    N_ ("Ply thickness as planed."),
    N_ ("Cut plies to length, plane the scarfs, and bend them hot and wet round the form."),
    N_ ("Steam scalds: vent the box, never heat it sealed, wear gloves and eye protection."),
    { RW_P_rim_ply_thickness } },
  { RW_STEP_COURSES,
    RW_RIM_SEGMENTS,
    NULL,
    N_ ("A flat caul, the ring sheet, and clamps that go round."),
    N_ ("Glue half rings, true their ends together, join the halves, then flatten both faces."),
    DUST,
    { 0 } },
  { RW_STEP_COURSES,
    RW_RIM_STAVES,
    N_ ("Glue the staves"),
    N_ ("A flat caul, the ring sheet, and clamps that go round."),
    N_ ("Glue halves, true their edges together, join the halves, then square the faces."),
    DUST,
    { 0 } },
  { RW_STEP_COURSES,
    RW_RIM_PLIES,
    N_ ("Laminate the plies"),
    N_ ("Plies dry and to shape; a form true to the rim."),
    N_ ("Glue ply on ply, scarfs apart from each other all round."),
    DUST,
    { 0 } },
  { RW_STEP_STACK,
    RW_RIM_SEGMENTS,
    NULL,
    N_ ("Each course flat; its thickness as made written down."),
    N_ ("Glue course on course, each turned so that its joints miss those below; true the last before adding "
        "the next."),
    NULL,
    { 0 } },
  { RW_STEP_TURN,
    ALL,
    NULL,
    N_ ("Bore of the head's band, measured; hole schedule against glue lines."),
    N_ ("Turn outside, inside and faces; try the head on while the rim is still on its plate."),
    N_ ("Turning: full face shield, no gloves or loose sleeves, stand aside when starting, keep to the speed "
        "limit of the lathe's manual."),
    { RW_P_rim_outer_diameter, RW_P_rim_wall, RW_P_rim_height } },
  { RW_STEP_EDGE,
    ALL,
    NULL,
    N_ ("Ring rolled and joined first, where there is one."),
    N_ ("Fit the ring or its groove, shape the bearing edge, check it on a flat plate with a light behind."),
    DUST,
    { RW_P_rim_tone_ring_height, RW_P_rim_crest_inset } },
  { RW_STEP_HOOP,
    ALL,
    NULL,
    N_ ("Rim and head as made; one test bend."),
    N_ ("Correct the former by the test bend, bend, cut, join, round over and file the notches."),
    N_ ("Brazing: clear and ventilate the bench, no galvanised or plated metal, eye protection, water by; "
        "local fire rules apply."),
    { RW_P_hoop_thickness, RW_P_hoop_height, RW_P_hoop_notch_depth, RW_P_hoop_springback_test } },
  { RW_STEP_NECK_BLANK,
    ALL,
    NULL,
    N_ ("Rod in hand; nut to rim; headstock angle."),
    N_ ("Square the blank, draw the centre line all round, cut the channel and the headstock's slope."),
    N_ ("Router: clamp the work, feed against the cutter, unplug it to change cutters; its manual comes "
        "first."),
    { RW_P_neck_rod_width, RW_P_neck_rod_depth } },
  { RW_STEP_HEEL,
    ALL,
    NULL,
    N_ ("Rim outside, ring height, head plane and neck angle as made."),
    N_ ("Cut the heel's face with the wedge while the blank is square, hollow it, and relieve it for the "
        "hoop."),
    SAW,
    { RW_P_neck_angle } },
  { RW_STEP_HEADSTOCK,
    ALL,
    NULL,
    N_ ("Tuners in hand: bushing, housing, grip."),
    N_ ("Glue ears and overlay, drill from the face into a backing board, then saw the outline."),
    NULL,
    { RW_P_headstock_post_hole, RW_P_headstock_thickness } },
  { RW_STEP_FRETBOARD,
    ALL,
    NULL,
    N_ ("Scale, saw kerf, and one square edge for the nut."),
    N_ ("Mark every slot from the nut with a knife, saw while the board is square, then taper it."),
    DUST,
    { RW_P_fretboard_thickness, RW_P_frets_slot_width } },
  { RW_STEP_FRETS,
    ALL,
    NULL,
    N_ ("Rod fitted and tested; the roughed neck has settled."),
    N_ ("Glue the board on its centre line, bind it, press the frets, dress and round them."),
    N_ ("Fret ends and filings are sharp: eye protection, and sweep up with a brush."),
    { RW_P_frets_crown_height } },
  { RW_STEP_FIFTH,
    ALL,
    NULL,
    N_ ("The peg's sleeve, or the tube bent and flattened; place of the rod."),
    N_ ("Drill for the peg clear of the rod, or lay the tube before the board goes on; set the short "
        "string's nut."),
    NULL,
    { 0 } },
  { RW_STEP_CARVE,
    ALL,
    NULL,
    N_ ("Gauges cut out; depth of the channel at each station."),
    N_ ("Plane the depth along the back, then first facets, then second, then round; stop at headstock and "
        "heel."),
    N_ ("Carve away from the hand that holds; clamp the neck."),
    { RW_P_neck_thickness_first, RW_P_neck_thickness_last } },
  { RW_STEP_FIT,
    ALL,
    NULL,
    N_ ("Rim sanded to size; heel face eased."),
    N_ ("Mark the rim from the neck, find the tail by halving the circumference, drill, and draw the joint "
        "up."),
    NULL,
    { RW_P_joint_rod_upper, RW_P_neck_set_height } },
  { RW_STEP_SHOES,
    ALL,
    NULL,
    N_ ("Tape round the rim; heel and tailpiece drawn on it; hoop's notches if it has them."),
    N_ ("Wrap the strip, prick through, drill with a block inside; drill and tap the shoes."),
    N_ ("Drilling metal: clamp the piece, never hold it by hand; eye protection."),
    { RW_P_shoes_stand_off, RW_P_shoes_bolt_hole } },
  { RW_STEP_HOOKS,
    ALL,
    NULL,
    N_ ("One hook bent and measured on the pot itself."),
    N_ ("Correct the cut by that hook, then cut, bend and thread the rest."),
    NULL,
    { RW_P_hooks_rod, RW_P_hooks_bend_radius } },
  { RW_STEP_STRING_UP,
    ALL,
    NULL,
    N_ ("All parts, unfinished."),
    N_ ("Assemble dry, tighten the head by eighths of a turn round the rim, string up, and correct angle and "
        "side line."),
    N_ ("Strings and head are under load and can let go: eye protection, face away while tuning up."),
    { RW_P_head_tap_frequency } },
  { RW_STEP_FINISH,
    ALL,
    NULL,
    N_ ("Everything fits and has been apart once."),
    N_ ("Ream pegs last; allow for the film in every hole."),
    N_ ("Solvents burn and their fumes harm: ventilate, no flame, oily or wet rags laid out flat outdoors; "
        "read the maker's sheet."),
    { 0 } },
  { RW_STEP_SET_UP,
    ALL,
    NULL,
    N_ ("Head at its tension for some days; tuned to pitch."),
    N_ ("Relief, then nut slots, then bridge height and place, then compensation by ear and by the list."),
    NULL,
    { RW_P_setup_action, RW_P_setup_relief, RW_P_nut_string_height } },
};

#define LINE 5.2
#define INDENT 8.0

/* A blank with its label and what is expected in it. */
static void
set_blank (RwColumn *column, const char *label, const char *expected, const char *tolerance)
{
  double w = column->job->width;

  rw_column_room (column, 0);
  rw_column_text (column, INDENT, RW_ALIGN_START, label);
  rw_column_text (column, w * 0.62, RW_ALIGN_END, expected);
  if (tolerance != NULL)
    rw_column_text (column, w * 0.63, RW_ALIGN_START, tolerance);
  rw_column_blank (column, w * 0.78, w);
  rw_column_down (column, LINE);
}

static char *
amount (const RwPaperJob *job, double value, const char *unit)
{
  gboolean fine = g_str_equal (unit, "mm") || g_str_equal (unit, "deg");
  g_autofree char *figure
      = rw_quantity_write (value, unit, job->style.units, fine ? 2 : 1, job->style.decimal);

  return g_strdup_printf ("%s%s%s", figure, g_str_equal (unit, "deg") ? "" : " ",
                          rw_quantity_unit (unit, job->style.units));
}

/* What is expected of a parameter as made; a strip width left open is the least that serves. */
static double
expected_value (const RwPaperJob *job, RwParamId id)
{
  double value = rw_design_get (&job->result->used, id);

  return id == RW_P_rim_strip_width && !(value > 0) ? job->result->value[RW_RIM_SEGMENT_MIN_WIDTH] : value;
}

static void
set_parameters (RwColumn *column, const Step *step)
{
  const RwPaperJob *job = column->job;

  for (guint i = 0; i < G_N_ELEMENTS (step->measure) && step->measure[i] > 0; i++)
    {
      const RwParam *param = rw_param (step->measure[i]);
      g_autofree char *expected = amount (job, expected_value (job, step->measure[i]), param->unit);

      set_blank (column, param->label, expected, NULL);
    }
}

/* The courses as flattened, before they are glued on each other. */
static void
set_courses (RwColumn *column)
{
  const RwPaperJob *job = column->job;
  const RwLengthList *courses = &job->result->used.rim_course_thickness;

  for (int k = 1; k <= courses->count; k++)
    {
      g_autofree char *label = g_strdup_printf (N_ ("Course %d flattened"), k),
                      *expected = amount (job, courses->at[k - 1], "mm");

      set_blank (column, label, expected, NULL);
    }
}

/* What the engine answers for this step and a rule can check; families such as hooks are on their own papers.
 */
static void
set_dimensions (RwColumn *column, RwStep step)
{
  const RwPaperJob *job = column->job;

  for (int i = 0; i < rw_dims_count; i++)
    {
      const RwDim *dim = &rw_dims[i];
      double value = job->result->value[dim->first];

      if (dim->step != step || dim->span != RW_SPAN_ONE || !(dim->tolerance > 0) || !isfinite (value))
        continue;

      g_autofree char *expected = amount (job, value, dim->unit),
                      *room = amount (job, dim->tolerance, dim->unit);
      g_autofree char *tolerance = g_strconcat ("± ", room, NULL);

      set_blank (column, dim->label, expected, tolerance);
    }
}

static void
set_words (RwColumn *column, const char *what, const char *words)
{
  g_autofree char *line = g_strdup_printf ("%s %s", what, words);

  rw_column_words (column, INDENT, line);
}

#define KEPT_TOGETHER 24.0

static void
set_step (RwColumn *column, const Step *step, int number)
{
  g_autofree char *title
      = g_strdup_printf ("%d   %s", number, step->title != NULL ? step->title : rw_step_title (step->step));

  rw_column_heading (column, KEPT_TOGETHER, title);
  set_words (column, N_ ("Known first:"), step->needs);
  set_words (column, N_ ("Do:"), step->work);
  if (step->caution != NULL)
    set_words (column, N_ ("Take care:"), step->caution);
  rw_column_down (column, 1);
  set_parameters (column, step);
  if (step->step == RW_STEP_STACK)
    set_courses (column);
  set_dimensions (column, step->step);
}

RwSheet *
rw_paper_steps (const RwPaperJob *job)
{
  RwColumn column = rw_column_begin (job, N_ ("Steps"));
  int number = 0;

  rw_column_words (&column, 0,
                   N_ ("Cautions here are reminders. Tool makers' manuals, local codes and licensed practice "
                       "come first; no number on these papers says that a thing is safe."));
  for (guint i = 0; i < G_N_ELEMENTS (steps); i++)
    if (steps[i].construction == ALL || steps[i].construction == job->result->used.rim_construction)
      set_step (&column, &steps[i], ++number);
  return rw_column_end (&column);
}
