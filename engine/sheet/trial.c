#include "trial.h"

#include <math.h>
#include <string.h>

double
rw_trial_letters (const RwTrialJob *job)
{
  return rw_letters_size (job->item->letters) * job->unit;
}

double
rw_trial_width (const RwTrialJob *job)
{
  return rw_lettering_width (job->item->text) * rw_trial_letters (job);
}

/* Box of a text from its heights: capitals and figures stand on the line, some signs and the line under a
 * measured figure reach below it. */
static RwBox
text_box (const RwPlacedText *text)
{
  gboolean below = text->figure == RW_FIGURE_MEASURED || strpbrk (text->text, "gjpqy,;()/@Q_") != NULL;
  double low = text->size * (below ? -0.32 : -0.05), high = text->size * 1.05;
  double c = cos (text->turn), s = sin (text->turn);
  RwBox box = { HUGE_VAL, HUGE_VAL, -HUGE_VAL, -HUGE_VAL };

  for (int i = 0; i < 4; i++)
    {
      double along = i & 1 ? text->width : 0, up = i & 2 ? high : low;
      RwPoint p = { text->at.x + along * c - up * s, text->at.y + along * s + up * c };

      box.x0 = MIN (box.x0, p.x);
      box.y0 = MIN (box.y0, p.y);
      box.x1 = MAX (box.x1, p.x);
      box.y1 = MAX (box.y1, p.y);
    }
  return box;
}

void
rw_trial_set_text (const RwTrialJob *job, RwTrial *trial, RwPoint at, double turn)
{
  trial->text = (RwPlacedText){
    .item = job->index,
    .at = at,
    .turn = turn,
    .size = rw_trial_letters (job),
    .width = rw_trial_width (job),
    .figure = job->item->figure,
    .text = job->item->text,
  };
  trial->text.box = text_box (&trial->text);
}

static RwPlacedMark *
add_mark (const RwTrialJob *job, RwTrial *trial, RwMarkKind kind)
{
  RwPlacedMark *mark = &trial->marks[trial->count++];

  g_assert (trial->count <= RW_TRIAL_MARKS);
  *mark = (RwPlacedMark){ .item = job->index, .kind = kind };
  return mark;
}

void
rw_trial_add_line (const RwTrialJob *job, RwTrial *trial, RwMarkKind kind, RwPoint a, RwPoint b)
{
  RwPlacedMark *mark = add_mark (job, trial, kind);

  mark->p[0] = a;
  mark->p[1] = b;
}

void
rw_trial_add_head (const RwTrialJob *job, RwTrial *trial, RwPoint tip, RwPoint way)
{
  RwPlacedMark *mark = add_mark (job, trial, RW_MARK_HEAD);
  double length = RW_TRIAL_HEAD * job->unit, half = length / 6;
  RwPoint back = { tip.x - way.x * length, tip.y - way.y * length };

  mark->p[0] = tip;
  mark->p[1] = (RwPoint){ back.x - way.y * half, back.y + way.x * half };
  mark->p[2] = (RwPoint){ back.x + way.y * half, back.y - way.x * half };
}

/* From a line to the base line of the text over it: more where the text has a line of its own under it. */
static double
figure_gap (const RwTrialJob *job)
{
  return (job->item->figure == RW_FIGURE_MEASURED ? 1.6 : 1) * RW_TRIAL_GAP * job->unit;
}

/* Texts: where the sheet says, and nowhere else. */

static gboolean
try_text (const RwTrialJob *job, RwTrial *trial)
{
  static const double before[] = { [RW_ALIGN_START] = 0, [RW_ALIGN_MIDDLE] = 0.5, [RW_ALIGN_END] = 1 };
  const RwItem *item = job->item;
  double c = cos (item->turn), s = sin (item->turn);
  double along = -before[item->align] * rw_trial_width (job), up = item->offset_mm * job->unit;
  RwPoint at = { item->p[0].x * job->scale, item->p[0].y * job->scale };

  at = (RwPoint){ at.x + along * c - up * s, at.y + along * s + up * c };
  rw_trial_set_text (job, trial, at, item->turn);
  return TRUE;
}

/* Leaders: an arrow, a line, and a landing under the text. */

static const struct
{
  int    x, y; /* -1: to the other side of the arrow */
  double far;
  double cost;
} leader_places[] = {
  { 1, 1, 1, 0 },    { 1, -1, 1, 1 },    { -1, 1, 1, 1.5 },    { -1, -1, 1, 2 },
  { 1, 1, 1.6, 2 },  { 1, -1, 1.6, 3 },  { -1, 1, 1.6, 3.5 },  { -1, -1, 1.6, 4 },
  { 1, 1, 2.5, 4 },  { 1, -1, 2.5, 5 },  { -1, 1, 2.5, 5.5 },  { -1, -1, 2.5, 6 },
};

static gboolean
try_leader (const RwTrialJob *job, int place, RwTrial *trial)
{
  const RwItem *item = job->item;
  double gap = RW_TRIAL_GAP * job->unit, landing = rw_trial_width (job) + gap;
  RwPoint tip = { item->p[0].x * job->scale, item->p[0].y * job->scale };
  double dx = item->p[1].x * job->scale - tip.x, dy = item->p[1].y * job->scale - tip.y;
  double length = hypot (dx, dy), least = 2 * RW_TRIAL_HEAD * job->unit;

  if (length < 1e-9)
    {
      dx = dy = least;
      length = hypot (dx, dy);
    }
  double stretch = leader_places[place].far * MAX (1, least / length);
  RwPoint elbow = { tip.x + dx * stretch * leader_places[place].x,
                    tip.y + dy * stretch * leader_places[place].y };
  gboolean leftwards = leader_places[place].x * (item->align == RW_ALIGN_END ? -1 : 1) < 0;
  RwPoint end = { elbow.x + (leftwards ? -landing : landing), elbow.y };

  length *= stretch;
  rw_trial_add_line (job, trial, RW_MARK_LINE, tip, elbow);
  rw_trial_add_line (job, trial, RW_MARK_LINE, elbow, end);
  rw_trial_add_head (job, trial, tip, (RwPoint){ (tip.x - elbow.x) / length, (tip.y - elbow.y) / length });
  rw_trial_set_text (job, trial, (RwPoint){ MIN (elbow.x, end.x) + gap / 2, elbow.y + figure_gap (job) }, 0);
  trial->cost = leader_places[place].cost;
  return TRUE;
}

/* Dimensions between two points */

#define LENGTH_MIN 0.05 /* paper mm: under this there is nothing to see */
#define UPRIGHT 0.1     /* what leans to the left no more than this is still read from the right */

typedef enum
{
  AT_MIDDLE,
  AT_START,
  AT_END,
  BEYOND_END,
  BEYOND_START,
} Place;

static const struct
{
  Place  at;
  int    row; /* further out */
  double cost;
} line_places[] = {
  { AT_MIDDLE, 0, 0 },     { AT_START, 0, 1 },   { AT_END, 0, 1 },       { BEYOND_END, 0, 2 },
  { BEYOND_START, 0, 2 },  { AT_MIDDLE, 1, 3 },  { AT_START, 1, 4 },     { AT_END, 1, 4 },
  { BEYOND_END, 1, 5 },    { BEYOND_START, 1, 5 }, { AT_MIDDLE, 2, 6 },  { AT_START, 2, 7 },
  { AT_END, 2, 7 },        { BEYOND_END, 2, 8 }, { BEYOND_START, 2, 8 },
};

/* A dimension line as it is read: along from the first end to the second, up over the line. */
typedef struct
{
  RwPoint along, up;  /* unit vectors */
  RwPoint object[2];  /* the points measured */
  RwPoint foot[2];    /* the ends of the line */
  double  length;
} Reading;

static double
dot (RwPoint a, RwPoint b)
{
  return a.x * b.x + a.y * b.y;
}

static RwPoint
walk (RwPoint from, RwPoint way, double distance)
{
  return (RwPoint){ from.x + way.x * distance, from.y + way.y * distance };
}

static RwPoint
left_of (RwPoint way)
{
  return (RwPoint){ -way.y, way.x };
}

/* The direction measured along, and the side that a positive offset is on. */
static gboolean
measured_along (const RwItem *item, RwPoint *along, RwPoint *side)
{
  RwPoint level = { cos (item->turn), sin (item->turn) };
  RwPoint line = { item->p[1].x - item->p[0].x, item->p[1].y - item->p[0].y };
  double length = hypot (line.x, line.y);

  switch (item->measure)
    {
    case RW_MEASURE_VERTICAL:
      *along = left_of (level);
      *side = level;
      return TRUE;
    case RW_MEASURE_ALIGNED:
      if (length <= 0)
        return FALSE;
      *along = (RwPoint){ line.x / length, line.y / length };
      *side = left_of (*along);
      return TRUE;
    default:
      *along = level;
      *side = left_of (level);
      return TRUE;
    }
}

static gboolean
read_dimension (const RwTrialJob *job, int row, Reading *reading)
{
  const RwItem *item = job->item;
  double sign = item->offset_mm < 0 ? -1 : 1;
  RwPoint side;

  if (!measured_along (item, &reading->along, &side))
    return FALSE;
  if (reading->along.x < -UPRIGHT || (reading->along.x < UPRIGHT && reading->along.y < 0))
    reading->along = (RwPoint){ -reading->along.x, -reading->along.y };
  reading->up = left_of (reading->along);

  RwPoint a = { item->p[0].x * job->scale, item->p[0].y * job->scale };
  RwPoint b = { item->p[1].x * job->scale, item->p[1].y * job->scale };
  gboolean in_order = dot (a, reading->along) <= dot (b, reading->along);
  double far = sign > 0 ? MAX (dot (a, side), dot (b, side)) : MIN (dot (a, side), dot (b, side));
  double line = far + (item->offset_mm + sign * row * RW_TRIAL_ROW) * job->unit;

  reading->object[0] = in_order ? a : b;
  reading->object[1] = in_order ? b : a;
  for (int i = 0; i < 2; i++)
    reading->foot[i] = walk (reading->object[i], side, line - dot (reading->object[i], side));
  reading->length = dot (reading->foot[1], reading->along) - dot (reading->foot[0], reading->along);
  return TRUE;
}

static void
add_extension (const RwTrialJob *job, RwTrial *trial, RwPoint object, RwPoint foot)
{
  double gap = RW_TRIAL_GAP * job->unit, overshoot = RW_TRIAL_OVERSHOOT * job->unit;
  RwPoint way = { foot.x - object.x, foot.y - object.y };
  double distance = hypot (way.x, way.y);

  if (distance <= gap)
    return;
  way = (RwPoint){ way.x / distance, way.y / distance };
  rw_trial_add_line (job, trial, RW_MARK_EXTENSION, walk (object, way, gap), walk (foot, way, overshoot));
}

/* Is there no room for two heads inside? */
static gboolean
is_short (const RwTrialJob *job, const Reading *reading)
{
  return reading->length < RW_TRIAL_SHORT * job->unit;
}

/* Where along the line, from its first end, the text begins; FALSE where it has no room. */
static gboolean
text_start (const RwTrialJob *job, const Reading *reading, Place at, double *start)
{
  double length = reading->length, width = rw_trial_width (job), gap = RW_TRIAL_GAP * job->unit;
  double head = RW_TRIAL_HEAD * job->unit;
  double beside = gap + (is_short (job, reading) ? head : 0);

  switch (at)
    {
    case AT_MIDDLE:
      *start = (length - width) / 2;
      return width + gap <= length;
    case AT_START:
      *start = head + gap;
      return width + 3 * (head + gap) <= length;
    case AT_END:
      *start = length - width - head - gap;
      return width + 3 * (head + gap) <= length;
    case BEYOND_END:
      *start = length + beside;
      return TRUE;
    default:
      *start = -beside - width;
      return TRUE;
    }
}

static gboolean
try_line (const RwTrialJob *job, int place, RwTrial *trial)
{
  Reading reading;
  double start;

  if (!read_dimension (job, line_places[place].row, &reading) || reading.length < LENGTH_MIN
      || !text_start (job, &reading, line_places[place].at, &start))
    return FALSE;

  gboolean outside = is_short (job, &reading);
  double tail = outside ? RW_TRIAL_TAIL * job->unit : 0;
  double line0 = MIN (-tail, start), line1 = MAX (reading.length + tail, start + rw_trial_width (job));
  RwPoint along = reading.along, back = { -along.x, -along.y };

  for (int i = 0; i < 2; i++)
    add_extension (job, trial, reading.object[i], reading.foot[i]);
  rw_trial_add_line (job, trial, RW_MARK_LINE, walk (reading.foot[0], along, line0),
                     walk (reading.foot[0], along, line1));
  rw_trial_add_head (job, trial, reading.foot[0], outside ? along : back);
  rw_trial_add_head (job, trial, reading.foot[1], outside ? back : along);

  RwPoint at = walk (walk (reading.foot[0], along, start), reading.up, figure_gap (job));
  rw_trial_set_text (job, trial, at, atan2 (along.y, along.x));
  trial->cost = line_places[place].cost;
  return TRUE;
}

int
rw_trial_places (const RwItem *item)
{
  switch (item->kind)
    {
    case RW_ITEM_TEXT:
      return 1;
    case RW_ITEM_LEADER:
      return G_N_ELEMENTS (leader_places);
    case RW_ITEM_DIMENSION:
      return item->measure == RW_MEASURE_ANGLE ? RW_ANGLE_PLACES : (int) G_N_ELEMENTS (line_places);
    default:
      return 0;
    }
}

gboolean
rw_trial_make (const RwTrialJob *job, int place, RwTrial *trial)
{
  trial->count = 0;
  trial->cost = 0;
  if (job->item->kind == RW_ITEM_TEXT)
    return try_text (job, trial);
  if (job->item->kind == RW_ITEM_LEADER)
    return try_leader (job, place, trial);
  if (job->item->measure == RW_MEASURE_ANGLE)
    return rw_trial_angle (job, place, trial);
  return try_line (job, place, trial);
}
