@echo off
rem Starts roundbook with the Java that lies beside it. Workbooks may be named or dropped on it.
setlocal
set "here=%~dp0"
set "kept=-XX:SharedArchiveFile=%here%lib\roundbook.jsa"
if exist "%here%lib\roundbook.aot" set "kept=-XX:AOTCache=%here%lib\roundbook.aot"
"%here%java\bin\java.exe" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC "%kept%" -Dsun.reflect.inflationThreshold=100000 -Xlog:disable -Xlog:all=error:stderr -cp "%here%lib\roundbook.jar" roundbook.app.Main %*
exit /b %errorlevel%
