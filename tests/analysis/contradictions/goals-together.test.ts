/** Goals that no result meets together, each beside look-alikes that one does. */
import { expectCases } from "../plans.ts";

const CODE = "goals-must-hold-together";

expectCases({
  "no average is shorter than the worst shot": {
    wrong: `20 shots
      success {
        worst carry at least 150 yd
        «average carry at most 145 yd»
      }`,
    code: CODE,
    says: ["line 6 (`worst carry at least 150 yd`) needs 20 with carry at least 150 yd", "line 7"],
    right: `20 shots
      success {
        worst carry at least 140 yd
        average carry at most 145 yd
      }`,
  },
  "no shot is longer than the best one": {
    wrong: `20 shots
      success {
        best carry at most 150 yd
        «at least 1 of 20 shots with carry at least 160 yd»
      }`,
    code: CODE,
    says: ["needs 20 with carry at most 150 yd"],
    right: `20 shots
      success {
        best carry at least 150 yd
        at least 1 of 20 shots with carry at least 160 yd
      }`,
  },
  "the worst of readings with two sides is the farthest from zero": {
    wrong: `20 shots
      success {
        worst offline within ±10 yd
        «average offline at least 12 yd left»
      }`,
    code: CODE,
    says: ["needs 20 with offline 10 yd left to 10 yd right"],
    right: `20 shots
      success {
        best offline within ±10 yd
        average offline at least 12 yd left
      }`,
  },
  "hits and bad shots, of which nothing else is said": {
    wrong: `10 shots
      target offline within ±8 yd
      success {
        at least 8 of 10 shots on target
        «at least 4 of 10 shots with offline at least 10 yd right»
      }`,
    code: CODE,
    says: ["needs 8 on target", "needs 4 with offline at least 10 yd right"],
    right: `10 shots
      target offline within ±8 yd
      success {
        at least 6 of 10 shots on target
        at most 4 of 10 shots with offline at least 10 yd right
      }`,
  },
  "averages of a quotient": {
    wrong: `10 shots
      success {
        average ball-speed at least 130 mph
        «average club-speed at most 75 mph»
      }`,
    code: CODE,
    says: ["line 6", "since smash-factor is ball-speed / club-speed, with smash-factor at most 1.6"],
    right: `10 shots
      success {
        average ball-speed at least 110 mph
        average club-speed at most 75 mph
      }`,
  },
  "averages of a quotient, as far as shots enter": {
    wrong: `10 shots
      require smash-factor at most 1.3
      success {
        average ball-speed at least 110 mph
        «average club-speed at most 80 mph»
      }`,
    code: CODE,
    says: ["with smash-factor at most 1.3"],
    right: `10 shots
      require smash-factor at most 1.3
      success {
        average ball-speed at least 100 mph
        average club-speed at most 80 mph
      }`,
  },
  "shares of however many shots": {
    wrong: `at least 20 shots
      success {
        at least 60 % of shots with start-direction at least 1° left
        «at least 50 % of shots with start-direction at least 2° right»
      }`,
    code: CODE,
    says: ["needs 60 % of shots with start-direction at least 1° left", "needs 50 % of shots with"],
    right: `at least 20 shots
      success {
        at least 50 % of shots with start-direction at least 1° left
        at least 50 % of shots with start-direction at least 2° right
      }`,
  },
  "goals for more shots than there are": {
    wrong: `12 shots
      success {
        at least 8 of 12 shots with start-direction at least 1° right
        «at least 5 of 12 shots with start-direction at least 1° left»
      }`,
    code: CODE,
    says: ["needs 8", "needs 5", "only 12 count"],
    right: `12 shots
      success {
        at least 7 of 12 shots with start-direction at least 1° right
        at least 5 of 12 shots with start-direction at least 1° left
      }`,
  },
  "at least and at most of the same": {
    wrong: `12 shots
      target carry at least 150 yd
      success {
        at least 8 of 12 shots on target
        «at most 6 of 12 shots with carry at least 140 yd»
      }`,
    code: CODE,
    says: ["needs 8 on target", "only 12 count"],
    right: `12 shots
      target carry at least 150 yd
      success {
        at least 8 of 12 shots on target
        at most 6 of 12 shots with carry below 140 yd
      }`,
  },
  "a run beside few hits": {
    wrong: `12 shots
      target carry at least 150 yd
      success {
        6 in a row on target
        «at most 40 % of shots with carry at least 150 yd»
      }`,
    code: CODE,
    says: ["needs 6 on target", "needs 8"],
    right: `12 shots
      target carry at least 150 yd
      success {
        4 in a row on target
        at most 40 % of shots with carry at least 150 yd
      }`,
  },
  "runs that need more shots than are hit": {
    wrong: `10 shots
      success {
        6 in a row with start-direction at least 1° right
        «6 in a row with start-direction at least 1° left»
      }`,
    code: CODE,
    says: ["only 10 count"],
    right: `at least 10 shots
      success {
        6 in a row with start-direction at least 1° right
        6 in a row with start-direction at least 1° left
      }`,
  },
  "three shapes in ten shots": {
    wrong: `10 shots
      success {
        at least 4 of 10 shots with shape is draw
        at least 4 of 10 shots with shape is fade
        «at least 4 of 10 shots with shape is straight»
      }`,
    code: CODE,
    says: ["two of these"],
    right: `10 shots
      success {
        at least 4 of 10 shots with shape is draw
        at least 3 of 10 shots with shape is fade
        at least 3 of 10 shots with shape is straight
      }`,
  },
  "averages that do not add up": {
    wrong: `10 shots
      success {
        average face-angle within ±1°
        average club-path at least 4° in-to-out
        «average face-to-path at most 2° closed»
      }`,
    code: CODE,
    says: ["line 6", "line 7", "face-to-path is face-angle − club-path"],
    right: `10 shots
      success {
        average face-angle within ±1°
        average club-path at least 4° in-to-out
        average face-to-path at most 5° closed
      }`,
  },
  "a median is one of an odd number of shots, and as many are on either side": {
    wrong: `11 shots
      success {
        median carry at most 150 yd
        «at least 6 of 11 shots with carry at least 151 yd»
      }`,
    code: CODE,
    says: ["needs 6 with carry at most 150 yd"],
    right: `11 shots
      success {
        median carry at most 150 yd
        at least 5 of 11 shots with carry at least 151 yd
      }`,
  },
  "beyond the ninetieth percentile of eleven there is one shot": {
    wrong: `11 shots
      success {
        90th percentile of carry at most 150 yd
        «at least 2 of 11 shots with carry at least 151 yd»
      }`,
    code: CODE,
    says: ["needs 10 with carry at most 150 yd"],
    right: `11 shots
      success {
        90th percentile of carry at most 150 yd
        at least 1 of 11 shots with carry at least 151 yd
      }`,
  },
  "and below the tenth": {
    wrong: `11 shots
      success {
        10th percentile of carry at least 150 yd
        «at least 2 of 11 shots with carry at most 149 yd»
      }`,
    code: CODE,
    says: ["needs 10 with carry at least 150 yd"],
    right: `11 shots
      success {
        10th percentile of carry at least 150 yd
        at least 1 of 11 shots with carry at most 149 yd
      }`,
  },
  "a median above the ninetieth percentile": {
    wrong: `10 shots
      success {
        median carry at least 150 yd
        «90th percentile of carry at most 140 yd»
      }`,
    code: CODE,
    says: ["needs 5 with carry at least 150 yd", "needs 9 with carry at most 140 yd"],
    right: `10 shots
      success {
        median carry at least 150 yd
        90th percentile of carry at most 165 yd
      }`,
  },
  "a spread that is both": {
    wrong: `10 shots
      success {
        spread of carry at most 6 yd
        «spread of carry above 8 yd»
      }`,
    code: CODE,
    says: ["line 6"],
    right: `10 shots
      success {
        spread of carry at most 6 yd
        spread of offline above 8 yd
      }`,
  },
  "a change and its opposite": {
    wrong: `
plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "After" test {
    10 shots
    success {
      spread of offline falls by at least 20 % against "Before"
      «spread of offline stays within 10 % against "Before"»
    }
  }
}`,
    code: CODE,
    says: ["line 9"],
    right: `
plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "After" test {
    10 shots
    success {
      spread of offline falls by at least 20 % against "Before"
      carry stays within 10 % against "Before"
    }
  }
}`,
  },
  "an ellipse that is longer across than along": {
    wrong: `15 shots
      success {
        minor axis of the 80 % ellipse of offline and carry at least 20 yd
        «major axis of the 80 % ellipse of carry and offline at most 15 yd»
      }`,
    code: CODE,
    says: ["line 6", "line 7", "since the major axis is the longer one"],
    right: `15 shots
      success {
        minor axis of the 80 % ellipse of offline and carry at most 20 yd
        major axis of the 80 % ellipse of carry and offline at most 15 yd
        major axis of the 50 % ellipse of carry and offline at most 12 yd
      }`,
  },
  "an ellipse with axes that leave no such area": {
    wrong: `15 shots
      success {
        minor axis of the 80 % ellipse of offline and carry at least 10 yd
        «area of the 80 % ellipse of offline and carry at most 70 yd²»
      }`,
    code: CODE,
    says: ["since the major axis is the longer one and the area is π/4 × major axis × minor axis"],
    right: `15 shots
      success {
        minor axis of the 80 % ellipse of offline and carry at least 10 yd
        area of the 80 % ellipse of offline and carry at most 80 yd²
        area of the 50 % ellipse of offline and carry at most 20 yd²
        area of the 80 % ellipse of offline and carry at most 70 yd² at 80 % confidence
      }`,
  },
  "an average below what most shots leave it": {
    wrong: `10 shots
      success {
        at least 7 of 10 shots with carry at least 150 yd
        «average carry at most 100 yd»
      }`,
    code: CODE,
    says: [
      "line 6 (`at least 7 of 10 shots with carry at least 150 yd`) leaves the average carry at least 105 yd, since a plausible carry is at least 0 yd, which is not what line 7 (`average carry at most 100 yd`) asks for",
    ],
    right: `10 shots
      success {
        at least 7 of 10 shots with carry at least 150 yd
        average carry at most 110 yd
      }`,
  },
  "a spread below what shots on both sides leave it": {
    wrong: `10 shots
      success {
        at least 3 of 10 shots with offline at least 10 yd left
        at least 3 of 10 shots with offline at least 10 yd right
        «spread of offline at most 8 yd»
      }`,
    code: CODE,
    says: ["line 6", "line 7", "leave the spread of offline at least 8.165 yd, which is not what line 8"],
    right: `10 shots
      success {
        at least 3 of 10 shots with offline at least 10 yd left
        at least 3 of 10 shots with offline at least 10 yd right
        spread of offline at most 8.2 yd
      }`,
  },
  "a spread below what a span leaves it": {
    wrong: `10 shots
      success {
        spread of carry at most 3 yd
        «middle 80 % of carry spans at least 30 yd»
      }`,
    code: CODE,
    says: [
      "line 7 (`middle 80 % of carry spans at least 30 yd`) leaves the spread of carry at least 7.071 yd",
    ],
    right: `10 shots
      success {
        spread of carry at most 8 yd
        middle 80 % of carry spans at least 30 yd
      }`,
  },
  "changes of face and path that leave no such change between them": {
    wrong: `
plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "After" test {
    10 shots
    success {
      face-angle moves at least 3° open against "Before"
      club-path moves at least 3° out-to-in against "Before"
      «face-to-path stays within 1° against "Before"»
    }
  }
}`,
    code: CODE,
    says: ["line 9", "line 10", "line 11", "since face-to-path is face-angle − club-path"],
    right: `
plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "After" test {
    10 shots
    success {
      face-angle moves at least 3° open against usual
      club-path moves at least 3° out-to-in against usual
      face-to-path stays within 1° against usual
      face-angle moves at least 3° open against "Before"
      face-to-path stays within 1° against "Before"
    }
  }
}`,
  },
  "a change of a number that is carry less a constant": {
    wrong: `
metric past-sixty is length {
  shown in m to 1
  formula carry * 2 - 60 m
}

plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "After" test {
    10 shots
    success {
      carry gains at least 10 m against "Before"
      «past-sixty gains at most 15 m against "Before"»
    }
  }
}`,
    code: CODE,
    says: ["since past-sixty follows from carry"],
    right: `
metric past-sixty is length {
  shown in m to 1
  formula carry * 2 - 60 m
}

plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "After" test {
    10 shots
    success {
      carry gains at least 10 m against "Before"
      past-sixty gains at most 20 m against "Before"
    }
  }
}`,
  },
  "a goal that leaves none of a group": {
    wrong: `10 shots
      success {
        average carry at least 160 yd
        any of {
          «average carry at most 150 yd»
          best carry at most 155 yd
        }
      }`,
    code: CODE,
    says: [
      "together, whatever is chosen from the group: line 6 (`average carry at least 160 yd`) and line 8",
    ],
    right: `10 shots
      success {
        average carry at least 160 yd
        any of {
          average carry at most 150 yd
          best carry at most 165 yd
        }
      }`,
  },
  "two of three that exclude each other": {
    wrong: `10 shots
      success 2 of {
        average carry at least 150 yd
        «average carry between 141 yd and 149 yd»
        average carry at most 140 yd
      }`,
    code: CODE,
    says: ["whatever is chosen from the group"],
    right: `10 shots
      success 2 of {
        average carry at least 150 yd
        average carry between 141 yd and 150 yd
        average carry at most 140 yd
      }`,
  },
  "a change by an amount and by a share the other way": {
    wrong: `
plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "After" test {
    10 shots
    success {
      carry gains at least 5 yd against "Before"
      «carry loses at least 2 % against "Before"»
    }
  }
}`,
    code: CODE,
    says: ["since what rises by an amount does not fall by a share"],
    right: `
plan "Gate" {
  block "Before" baseline {
    10 shots
  }
  block "After" test {
    10 shots
    success {
      carry gains at least 5 yd against "Before"
      carry loses at most 2 % against "Before"
      median carry loses at least 2 % against "Before"
      carry loses at least 2 % against usual
    }
  }
}`,
  },
  "an average above what most shots leave it, but not where their readings may be missing": {
    wrong: `10 shots
      success {
        at least 9 of 10 shots with carry at most 100 yd
        «average carry at least 130 yd»
      }`,
    code: CODE,
    says: ["leaves the average carry at most 128.3 yd, since a plausible carry is at most 382.8 yd"],
    right: `10 shots
      success {
        at least 9 of 10 shots with total at most 100 yd
        average carry at least 130 yd
      }`,
  },
  "a spread beyond what the best and the worst shot leave": {
    wrong: `10 shots
      success {
        best carry at most 150 yd
        worst carry at least 148 yd
        «spread of carry at least 5 yd»
      }`,
    code: CODE,
    says: ["line 6 (", "line 7 (", "leave the spread of carry at most 1.414 yd"],
    right: `10 shots
      success {
        best carry at most 156 yd
        worst carry at least 148 yd
        spread of carry at least 5 yd
      }`,
  },
  "an average beyond what the best shot and some short ones leave": {
    wrong: `10 shots
      success {
        at least 5 of 10 shots with carry below 130 yd
        best carry at most 150 yd
        «average carry at least 142 yd»
      }`,
    code: CODE,
    says: ["leave the average carry at most 140 yd"],
    right: `10 shots
      success {
        at least 5 of 10 shots with carry below 130 yd
        best carry at most 150 yd
        average carry at least 139 yd
      }`,
  },
  "a spread of shots that all lie close together": {
    wrong: `10 shots
      success {
        at most 0 of 10 shots with offline above 3 yd right
        at least 10 of 10 shots with offline at most 3 yd left
        «spread of offline at least 5 yd»
      }`,
    code: CODE,
    says: ["leave the spread of offline at most 4.243 yd"],
    right: `10 shots
      success {
        at most 0 of 10 shots with offline above 3 yd right
        at least 9 of 10 shots with offline at most 3 yd left
        spread of offline at least 5 yd
      }`,
  },
  "a worst shot above some that count, whatever else is required": {
    wrong: `10 shots
      require smash-factor at least 1.2
      success {
        worst carry at least 140 yd
        «at least 3 of 10 shots with carry below 130 yd»
      }`,
    code: CODE,
    says: ["line 7 (`worst carry at least 140 yd`) leaves no shot of the kind that line 8 ("],
    right: `10 shots
      require smash-factor at least 1.2
      success {
        worst carry at least 140 yd
        at least 3 of 10 shots with total below 130 yd
      }`,
  },
  "a best shot below the average, however many are hit": {
    wrong: `at least 10 shots
      success {
        best carry at most 140 yd
        «average carry at least 150 yd»
      }`,
    code: CODE,
    says: ["leaves no shot of the kind"],
    right: `at least 10 shots
      success {
        best carry at most 140 yd
        average carry at least 130 yd
      }`,
  },
});
