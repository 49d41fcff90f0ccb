/* Parameters: what the maker sets, as a value of type RwDesign, and the table that describes each one.
 *
 * Everything that deals with parameters (form, project file, command line, undo, help, random builds in
 * tests) goes through RwParam, so that a new parameter is one new row in params.def and the formula that
 * uses it.
 */
#pragma once

#include "quantity.h"
#include "text.h"
#include "wire.h"

#define RW_STRINGS_MAX 8
#define RW_COURSES_MAX 12
#define RW_FRETS_MAX 30

/* One string as bought.  Strings are counted from 1 at the treble edge; only the last may be short. */
typedef struct
{
  char     note[12];   /* as written: "D4", "F#3", "Bb3", or a frequency "146.83" in Hz */
  double   outer_mm;   /* outside diameter */
  double   core_mm;    /* core of a wound string; 0 for a plain one */
  double   wrap_kg_m3; /* density of the wrap; 0: RW_WRAP_DENSITY */
  double   mass_kg_m;  /* measured mass per length; 0: worked out */
  gboolean is_short;
  RwWire   wire;       /* of plain string or core */
} RwString;

typedef struct
{
  int      count;
  RwString at[RW_STRINGS_MAX];
} RwStringSet;

/* Thickness of one course, mm. */
#define RW_COURSE_MIN 1.0
#define RW_COURSE_MAX 120.0

typedef struct
{
  int    count;
  double at[RW_COURSES_MAX];
} RwLengthList;

/* Cents off equal temperament of the steps above the nut, from the 1st; steps without one have none.  Octaves are
 * alike. */
#define RW_TONES 12

typedef struct
{
  int    count;
  double at[RW_TONES];
} RwCentsList;

typedef struct
{
  int count;
  int at[RW_COURSES_MAX]; /* rows of the table of woods */
} RwWoodList;

/* A design: every parameter by its own name.  A plain value: copied by assignment, compared with
 * rw_design_equal().  Choices hold the place of the option in the row's options; woods, metals and
 * threads the row of their table; counts are whole doubles.
 *
 *   PARAM (double, scale_length, ...)  becomes  double scale_length;
 */
typedef struct
{
#define GROUP(label)
#define PARAM(type, field, ...) type field;
#include "params.def"
#undef PARAM
#undef GROUP
} RwDesign;

/* Names for the places of choices, in the order of their options in params.def. */
enum { RW_HANDED_RIGHT, RW_HANDED_LEFT };
enum { RW_SQUARE_TO_NECK, RW_SQUARE_TO_STRINGS };
enum { RW_SLOTS_ACROSS, RW_SLOTS_OWN };
enum { RW_ROUTE_SIDE_PEG, RW_ROUTE_TUNNEL };
enum { RW_SOLVE_ANGLE, RW_SOLVE_BRIDGE, RW_SOLVE_ACTION };
enum { RW_RIM_SEGMENTS, RW_RIM_STAVES, RW_RIM_PLIES };
enum { RW_HEAD_FILM, RW_HEAD_SKIN };
enum { RW_TENSION_GIVEN, RW_TENSION_FROM_TAP };
enum { RW_MODE_01, RW_MODE_11, RW_MODE_21 };
enum { RW_SEAT_NOTCHES, RW_SEAT_GROOVE };
enum { RW_LAYOUT_EVEN, RW_LAYOUT_SIDES };
enum { RW_FIRST_STRADDLE, RW_FIRST_NECK_TAKES_ONE };
enum { RW_JOINT_RODS, RW_JOINT_STICK };
enum { RW_YES, RW_NO };

/* RW_P_scale_length and so on: the place of each parameter in the table. */
typedef enum
{
#define GROUP(label)
#define PARAM(type, field, ...) RW_P_##field,
#include "params.def"
#undef PARAM
#undef GROUP
  RW_PARAM_COUNT,
} RwParamId;

typedef enum
{
  RW_KIND_LENGTH,
  RW_KIND_ANGLE,
  RW_KIND_RATIO,
  RW_KIND_COUNT, /* a whole number */
  RW_KIND_MASS,
  RW_KIND_DENSITY,
  RW_KIND_TENSION,
  RW_KIND_FREQUENCY,
  RW_KIND_MODULUS,
  RW_KIND_TEMPERATURE,
  RW_KIND_SPEED,
  RW_KIND_VOLUME,
  RW_KIND_CHOICE, /* from here on not a number */
  RW_KIND_WOOD,
  RW_KIND_METAL,
  RW_KIND_THREAD,
  RW_KIND_LENGTH_LIST,
  RW_KIND_CENTS_LIST,
  RW_KIND_WOOD_LIST,
  RW_KIND_STRING_SET,
} RwKind;

typedef struct
{
  const char *id;
  const char *group; /* label of the group; the same pointer for all rows of a group */
  const char *label;
  const char *meaning;
  const char *unit;
  const char *initial; /* the default, as text */
  const char *options; /* "right|left" for choices, else NULL */
  double      min, max, step;
  RwKind      kind;
  size_t      offset; /* into RwDesign */
} RwParam;

#define RW_PARAM_ERROR (rw_param_error_quark ())
GQuark rw_param_error_quark (void);

typedef enum
{
  RW_PARAM_ERROR_UNKNOWN, /* no such id */
  RW_PARAM_ERROR_VALUE,   /* text that is no value of the kind */
  RW_PARAM_ERROR_RANGE,   /* outside min..max */
} RwParamError;

/* How text is read and written: by people in their units and locale, or in files. */
typedef struct
{
  RwUnits units;   /* bare lengths are in mm, or in inches for both kinds of inch */
  char    decimal; /* ',' or '.' */
} RwStyle;

#define RW_STYLE_FILE ((RwStyle){ RW_UNITS_MM, '.' })

const RwParam *rw_param       (RwParamId id);
/* The parameter called id, or -1.  Constant time is not needed: a few hundred comparisons. */
int            rw_param_find  (const char *id);
gboolean       rw_param_is_number (const RwParam *param);
/* Whether it is a limit of a check, how close is close enough, or what the shop holds, and no size of the build:
 * nothing is measured for it, and no dimension follows from it. */
gboolean       rw_param_is_limit  (const RwParam *param);
/* The name of the kind as the parameter table of the command line shows it: "length", "choice" ... */
const char    *rw_param_kind_name (const RwParam *param);

/* The built-in build: every parameter at its default. */
void     rw_design_init  (RwDesign *design);
gboolean rw_design_equal (const RwDesign *a, const RwDesign *b);

/* Numbers by table: only for kinds that are numbers.  set refuses what is outside the range or, for a
 * count, not whole, with a sentence that names the parameter, the value and the range. */
double   rw_design_get (const RwDesign *design, RwParamId id);
gboolean rw_design_set (RwDesign *design, RwParamId id, double value, GError **error);

/* Any kind by text.  read leaves the design as it was where the text is refused.  write gives the text
 * that read takes back to the same value; with RW_STYLE_FILE exactly the same, to the last bit.
 * rw_design_check() is read without writing: for an entry that is being typed. */
gboolean rw_design_read  (RwDesign *design, RwParamId id, const char *text, RwStyle style, GError **error);
char    *rw_design_write (const RwDesign *design, RwParamId id, RwStyle style);
gboolean rw_design_same  (const RwDesign *a, const RwDesign *b, RwParamId id);
/* Copies one parameter. */
void     rw_design_copy  (RwDesign *to, const RwDesign *from, RwParamId id);
