#include "pitch.h"

#include "slots.h"
#include "string_load.h"

typedef struct
{
  double stiffness; /* E A of plain wire or core, N */
  double bending;   /* E I, N mm2 */
  double clamped;   /* 0 hinged ends to 1 clamped */
  double mass;      /* kg/m */
  double open;      /* Hz */
  double tension;   /* N */
  int    string;    /* which one it is */
  double from;      /* where that is, mm from the nut line */
  double nut;       /* height of that end over the fret plane, mm */
  double reach;     /* from there to the bridge, along the plane */
  double length;    /* speaking length, open, mm */
  double strained;  /* lt, mm */
  double unstrained;
} Wire;

static double
distance (double along, double across)
{
  return sqrt (along * along + across * across);
}

double
rw_pitch_stiffened (double end, double clamped)
{
  return sqrt (1 + G_PI * G_PI * end * end) + clamped * (2 * end + 4 * end * end);
}

static double
stiffened (const Wire *wire, double tension, double length)
{
  return rw_pitch_stiffened (sqrt (wire->bending / tension) / length, wire->clamped);
}

static double
frequency (const Wire *wire, double tension, double stretch, double length)
{
  double mass = wire->mass * wire->strained / (wire->strained + stretch);
  double speed = sqrt (tension / mass);

  return speed * stiffened (wire, tension, length) / (2 * length * 1e-3);
}

/* The open string tuned: T (1 + B) = mu (2 l f)^2, and T B = pi^2 E I/l^2 whatever T.  Clamped ends take off some
 * thousandths more, each round of which tells the next to a hundredth. */
static void
tune (Wire *wire, double length)
{
  double speed = 2 * length * 1e-3 * wire->open;

  wire->tension = wire->mass * speed * speed - G_PI * G_PI * wire->bending / (length * length);
  for (int round = 0; round < 6 && wire->clamped > 0; round++)
    {
      double up = stiffened (wire, wire->tension, length);

      wire->tension = wire->mass * speed * speed / (up * up);
    }
  wire->length = length;
}

static Wire
take_string (const RwModel *m, int i)
{
  const RwString *s = &m->d->strings_set.at[i - 1];
  double d = rw_string_wire (s);
  double modulus = rw_wire_modulus (s->wire, m->d->strings_modulus) * 1000, d2 = d * d;

  return (Wire){ .stiffness = modulus * G_PI * d2 / 4,
                 .bending = modulus * G_PI * d2 * d2 / 64,
                 .clamped = m->guessed.ends,
                 .mass = m->mass[i],
                 .open = m->frequency[i] };
}

/* Where both ends of a string stand off their theoretical lines, mm: the bridge away from the nut, the nut
 * towards the bridge. */
typedef struct
{
  double back, forward;
} Ends;

/* The open string in tune. */
static Wire
string_up (const RwModel *m, int string, Ends ends)
{
  const RwPlan *plan = &m->r->plan;
  const RwSide *side = &m->r->side;
  Wire wire = take_string (m, string);
  gboolean is_short = string > plan->full;

  wire.string = string;
  wire.from = (is_short ? plan->short_x : 0) + ends.forward;
  wire.nut = is_short ? m->d->fifth_start_height + side->lift_short : m->d->nut_string_height + side->pull_up;
  wire.reach = plan->length - wire.from + ends.back;
  tune (&wire, distance (wire.reach, side->fret_plane - wire.nut));
  wire.strained = wire.reach;
  if (m->d->strings_slip == RW_YES)
    wire.strained = plan->length - wire.from + ends.forward + m->after[string] + m->d->tailpiece_anchor;
  wire.unstrained = wire.strained / (1 + wire.tension / wire.stiffness);
  return wire;
}

/* What sounds at a fret, Hz. */
static double
note_at (const RwModel *m, const Wire *wire, int fret)
{
  const RwSide *side = &m->r->side;
  double d = rw_slot_place (m->r, wire->string, fret) - wire->from, crown = side->lift[fret];
  double speaking = distance (wire->reach - d, side->fret_plane - crown);
  double stretch = distance (d, wire->nut - crown) + speaking - wire->length;
  double tension = wire->stiffness * ((wire->strained + stretch) / wire->unstrained - 1);

  return frequency (wire, tension, stretch, speaking);
}

static double
cents_off (const RwModel *m, const Wire *wire, int fret, double note)
{
  return 1200 * log2 (note / wire->open) - m->wanted[wire->string][fret];
}

static double
error_at (const RwModel *m, const Wire *wire, int fret)
{
  return cents_off (m, wire, fret, note_at (m, wire, fret));
}

double
rw_pitch_error (const RwModel *m, int string, int fret, double set_back)
{
  Wire wire = string_up (m, string, (Ends){ set_back, 0 });

  return error_at (m, &wire, fret);
}

typedef struct
{
  const RwModel *m;
  int            string;
} String;

static double
error_at_12 (double set_back, void *data)
{
  const String *s = data;

  return rw_pitch_error (s->m, s->string, 12, set_back);
}

/* How far an end is moved to see what that does, mm. */
#define STEP 0.01
/* A step of the search by less, mm, leaves nothing to look for: the next would be a thousandth of it. */
#define STILL 1e-4

/* Cents by which a note moves with an end that is moved by STEP, for each mm: 1200 log2(1 + r)/STEP for a
 * small r. */
static double
rate (double note, double moved)
{
  double r = moved / note - 1;

  return 1200 / G_LN2 / STEP * (r - r * r / 2);
}

static int
first_fret (const RwModel *m, int string)
{
  return string > m->r->plan.full ? (int) m->d->fifth_start_fret + 1 : 1;
}

/* One step of Gauss and Newton towards the least sum of squares: place and slope of a straight bridge.
 * Returns how far the bridge moved, mm. */
static double
improve (const RwModel *m, double *place, double *slope)
{
  const RwPlan *plan = &m->r->plan;
  double a11 = 0, a12 = 0, a22 = 0, b1 = 0, b2 = 0;

  for (int i = 1; i <= plan->strings; i++)
    {
      double arm = -plan->bridge_y[i], set_back = *place + *slope * arm;
      Wire wire = string_up (m, i, (Ends){ set_back, 0 }), moved = string_up (m, i, (Ends){ set_back + STEP, 0 });

      for (int n = first_fret (m, i); n <= plan->last; n++)
        {
          double note = note_at (m, &wire, n), here = cents_off (m, &wire, n, note);
          double back = rate (note, note_at (m, &moved, n));

          a11 += back * back;
          a12 += back * back * arm;
          a22 += back * back * arm * arm;
          b1 -= back * here;
          b2 -= back * here * arm;
        }
    }
  double det = a11 * a22 - a12 * a12;
  double along = (b1 * a22 - b2 * a12) / det, turn = (b2 * a11 - b1 * a12) / det;

  *place += along;
  *slope += turn;
  return fabs (along) + fabs (turn * plan->bridge_y[1]);
}

static void
errors_at_best (RwModel *m, double place, double slope)
{
  const RwPlan *plan = &m->r->plan;

  for (int i = 1; i <= plan->strings; i++)
    {
      Wire wire = string_up (m, i, (Ends){ place - slope * plan->bridge_y[i], 0 });

      for (int n = first_fret (m, i); n <= plan->last; n++)
        m->r->cents_best[i][n] = error_at (m, &wire, n);
    }
}

static void
straight_bridge (RwModel *m)
{
  double place = 0, slope = 0, moved = INFINITY;

  for (int i = 0; i < 8 && moved > STILL; i++)
    moved = improve (m, &place, &slope);
  rw_settle (m, RW_BRIDGE_BEST_OFFSET, place);
  rw_settle (m, RW_BRIDGE_BEST_ANGLE, atan (slope) / RW_RAD);
  errors_at_best (m, place, slope);
}

/* Frets over which nut and bridge are set together. */
#define NUT_FRETS 15

/* Gauss and Newton again, for one string whose nut and bridge may both move. */
static void
both_ends (RwModel *m, int string)
{
  int first = first_fret (m, string), last = MIN (m->r->plan.last, first + NUT_FRETS - 1);
  Ends ends = { 0, 0 };
  double moved = INFINITY;

  if (last - first < 1)
    return;
  for (int i = 0; i < 6 && moved > STILL; i++)
    {
      Wire wire = string_up (m, string, ends);
      Wire back = string_up (m, string, (Ends){ ends.back + STEP, ends.forward });
      Wire forward = string_up (m, string, (Ends){ ends.back, ends.forward + STEP });
      double a11 = 0, a12 = 0, a22 = 0, b1 = 0, b2 = 0;

      for (int n = first; n <= last; n++)
        {
          double note = note_at (m, &wire, n), here = cents_off (m, &wire, n, note);
          double by_back = rate (note, note_at (m, &back, n));
          double by_forward = rate (note, note_at (m, &forward, n));

          a11 += by_back * by_back;
          a12 += by_back * by_forward;
          a22 += by_forward * by_forward;
          b1 -= by_back * here;
          b2 -= by_forward * here;
        }
      double det = a11 * a22 - a12 * a12;
      double more_back = (b1 * a22 - b2 * a12) / det, more_forward = (b2 * a11 - b1 * a12) / det;
      ends.back += more_back;
      ends.forward += more_forward;
      moved = fabs (more_back) + fabs (more_forward);
    }
  rw_settle (m, RW_NUT_FORWARD + string, ends.forward);
  rw_settle (m, RW_BRIDGE_BACK_WITH_NUT + string, ends.back);
}

void
rw_model_pitch (RwModel *m)
{
  const RwPlan *plan = &m->r->plan;

  for (int i = 0; i <= RW_STRINGS_MAX; i++)
    for (int n = 0; n <= RW_FRETS_MAX; n++)
      m->r->cents_best[i][n] = NAN;
  if (m->r->side.outcome != RW_SIDE_SOLVED)
    return;
  for (int i = 1; i <= plan->strings; i++)
    {
      String s = { m, i };

      Wire wire = string_up (m, i, (Ends){ 0, 0 });

      for (int n = first_fret (m, i); n <= plan->last; n++)
        rw_settle (m, RW_SLOT2 (RW_SETUP_CENTS, i, n), error_at (m, &wire, n));
      if (first_fret (m, i) <= 12)
        rw_settle (m, RW_BRIDGE_COMPENSATION + i, rw_root (error_at_12, &s, -20, 40));
      both_ends (m, i);
    }
  straight_bridge (m);
}
