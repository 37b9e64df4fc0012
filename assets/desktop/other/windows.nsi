; An installer for Windows. NOT TRIED: see README.md beside this file.
;
; In an MSYS2 UCRT64 shell, at the top of the tree (the window needs cgo; -H windowsgui
; keeps a console from opening, so that the verbs write nothing when typed in one: build
; a second program without it where those are wanted):
;
;   go build -ldflags '-s -w -H windowsgui' -o bin/studbay.exe ./app
;   magick assets/icon/app/*.png bin/studbay.ico
;   makensis -DVERSION=0.1.0 assets/desktop/other/windows.nsi
;
; It installs for one user, without an administrator's rights, and writes no key that it
; does not take back.

!ifndef VERSION
  !error "say -DVERSION=..."
!endif
!define TOP "..\..\.."
!define UNINSTALL "Software\Microsoft\Windows\CurrentVersion\Uninstall\Studbay"

Unicode true
Name "Studbay ${VERSION}"
OutFile "${TOP}\bin\studbay-${VERSION}-setup.exe"
RequestExecutionLevel user
InstallDir "$LOCALAPPDATA\Programs\Studbay"
InstallDirRegKey HKCU "Software\Studbay" "Folder"

Page license
Page directory
Page instfiles
UninstPage uninstConfirm
UninstPage instfiles
LicenseData "${TOP}\LICENSE"
LoadLanguageFile "${NSISDIR}\Contrib\Language files\English.nlf"
LoadLanguageFile "${NSISDIR}\Contrib\Language files\Spanish.nlf"

Section
  SetOutPath "$INSTDIR"
  File "${TOP}\bin\studbay.exe"
  File "${TOP}\bin\studbay.ico"
  File "${TOP}\LICENSE"
  SetOutPath "$INSTDIR\notices"
  File "${TOP}\assets\notices\*.txt"
  WriteUninstaller "$INSTDIR\uninstall.exe"
  CreateShortcut "$SMPROGRAMS\Studbay.lnk" "$INSTDIR\studbay.exe" "" "$INSTDIR\studbay.ico"

  WriteRegStr HKCU "Software\Studbay" "Folder" "$INSTDIR"
  WriteRegStr HKCU "Software\Classes\.studbay" "" "Studbay.Plan"
  WriteRegStr HKCU "Software\Classes\.studbay" "Content Type" "application/vnd.studbay+json"
  WriteRegStr HKCU "Software\Classes\Studbay.Plan" "" "Studbay plan"
  WriteRegStr HKCU "Software\Classes\Studbay.Plan\DefaultIcon" "" "$INSTDIR\studbay.ico"
  WriteRegStr HKCU "Software\Classes\Studbay.Plan\shell\open\command" "" '"$INSTDIR\studbay.exe" "%1"'
  WriteRegStr HKCU "${UNINSTALL}" "DisplayName" "Studbay"
  WriteRegStr HKCU "${UNINSTALL}" "DisplayVersion" "${VERSION}"
  WriteRegStr HKCU "${UNINSTALL}" "DisplayIcon" "$INSTDIR\studbay.ico"
  WriteRegStr HKCU "${UNINSTALL}" "UninstallString" '"$INSTDIR\uninstall.exe"'
  System::Call 'shell32::SHChangeNotify(i 0x08000000, i 0, p 0, p 0)'
SectionEnd

Section "Uninstall"
  Delete "$INSTDIR\studbay.exe"
  Delete "$INSTDIR\studbay.ico"
  Delete "$INSTDIR\LICENSE"
  Delete "$INSTDIR\notices\*.txt"
  RMDir "$INSTDIR\notices"
  Delete "$INSTDIR\uninstall.exe"
  RMDir "$INSTDIR"
  Delete "$SMPROGRAMS\Studbay.lnk"
  DeleteRegKey HKCU "Software\Classes\Studbay.Plan"
  DeleteRegKey HKCU "Software\Classes\.studbay"
  DeleteRegKey HKCU "${UNINSTALL}"
  DeleteRegKey HKCU "Software\Studbay"
  System::Call 'shell32::SHChangeNotify(i 0x08000000, i 0, p 0, p 0)'
SectionEnd
